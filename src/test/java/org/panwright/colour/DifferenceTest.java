package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.panwright.Tolerance;

class DifferenceTest {
  private static final Lab OCHRE = new Lab(64, 15, 52);
  private static final Lab BLUE = new Lab(35, 20, -55);

  /** Sharma, Wu and Dalal, Color Research and Application 30, 2005, table 1: all 34 pairs. */
  @ParameterizedTest(name = "Sharma, Wu & Dalal pair {0}")
  @CsvFileSource(
      resources = "/org/panwright/colour/ciede2000-sharma-wu-dalal-2005.csv",
      useHeadersInDisplayName = false,
      numLinesToSkip = 2)
  void ciede2000IsThePublishedValue(
      int pair,
      double l1,
      double a1,
      double b1,
      double l2,
      double a2,
      double b2,
      double published) {
    Lab first = new Lab(l1, a1, b1);
    Lab second = new Lab(l2, a2, b2);

    assertThat(Difference.ciede2000(first, second)).isCloseTo(published, Tolerance.CIEDE2000);
    assertThat(Difference.ciede2000(second, first)).isCloseTo(published, Tolerance.CIEDE2000);
  }

  @Test
  void noDistanceFromItself() {
    assertThat(Difference.ciede2000(OCHRE, OCHRE)).isZero();
    assertThat(Difference.ab(OCHRE, OCHRE)).isZero();
  }

  @Test
  void abIsTheStraightDistance() {
    // 29² + 5² + 107² = 12315, worked by hand from the definition in CIE 015.
    assertThat(Difference.ab(OCHRE, BLUE)).isCloseTo(Math.sqrt(12315), Tolerance.ROUND_TRIP);
  }

  @Test
  void neutralsHaveNoHueStep() {
    // SL = 1 at L* = 50 and the pair differs in lightness alone: ΔE00 = ΔL* / SL(50.5), by hand.
    double l50 = 0.25;
    double expected = 1 / (1 + 0.015 * l50 / Math.sqrt(20 + l50));

    assertThat(Difference.ciede2000(new Lab(50, 0, 0), new Lab(51, 0, 0)))
        .isCloseTo(expected, Tolerance.ROUND_TRIP);
  }

  @Test
  void farColoursStillHaveAFiniteDistance() {
    assertThat(Difference.ciede2000(new Lab(0, 0, 0), new Lab(100, 0, 0))).isFinite().isPositive();
    assertThat(Difference.ciede2000(new Lab(50, 500, 500), new Lab(50, -500, -500)))
        .isFinite()
        .isPositive();
  }
}
