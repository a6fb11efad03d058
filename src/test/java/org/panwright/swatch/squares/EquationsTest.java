package org.panwright.swatch.squares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The normal equations against hand calculation and against what a solution has to fulfil. */
class EquationsTest {
  private static final double EXACT = 1e-9;

  /**
   * By hand: residuals x − 3 and x + y − 5 are both 0 at x = 3, y = 2; from (0, 0) one undamped
   * step goes there.
   */
  @Test
  void twoLinearResidualsAreSolvedInOneStep() {
    Equations equations = new Equations(2);
    equations.add(new int[] {0}, new double[] {1}, -3, 1);
    equations.add(new int[] {0, 1}, new double[] {1, 1}, -5, 1);

    assertThat(equations.step(0).orElseThrow()).containsExactly(new double[] {3, 2}, within(EXACT));
  }

  /** By hand: A = (2 1; 1 1), so A⁻¹ = (1 −1; −1 2) and the variances are 1, 2 and 1 (of x + y). */
  @Test
  void theVarianceIsThatOfTheInverse() {
    Equations equations = new Equations(2);
    equations.add(new int[] {0}, new double[] {1}, 0, 1);
    equations.add(new int[] {0, 1}, new double[] {1, 1}, 0, 1);

    Equations.Uncertainty known = equations.uncertainty().orElseThrow();
    assertThat(known.variance(new int[] {0}, new double[] {1})).isCloseTo(1, within(EXACT));
    assertThat(known.variance(new int[] {1}, new double[] {1})).isCloseTo(2, within(EXACT));
    assertThat(known.variance(new int[] {0, 1}, new double[] {1, 1})).isCloseTo(1, within(EXACT));
  }

  /** Whatever the number of unknowns, the residuals of a linear problem with a solution vanish. */
  @ParameterizedTest
  @ValueSource(ints = {1, 3, 4, 5, 8, 37})
  void aStepFulfilsAsManyLinearResidualsAsThereAreUnknowns(int size) {
    Random random = new Random(size);
    double[] wanted = random.doubles(size, -2, 2).toArray();
    Equations equations = new Equations(size);
    int[] all = new int[size];
    for (int i = 0; i < size; i++) {
      all[i] = i;
    }
    for (int i = 0; i < 2 * size; i++) {
      double[] slopes = random.doubles(size, -1, 1).toArray();
      double sum = 0;
      for (int k = 0; k < size; k++) {
        sum += slopes[k] * wanted[k];
      }
      equations.add(all, slopes, -sum, 0.5);
    }

    assertThat(equations.step(0).orElseThrow()).containsExactly(wanted, within(1e-7));
  }

  @Test
  void whatNothingIsKnownOfHasNoUndampedStep() {
    Equations equations = new Equations(6);
    equations.add(new int[] {0, 1}, new double[] {1, 1}, 1, 1);

    assertThat(equations.uncertainty()).isEmpty();
  }
}
