package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected figures are worked by hand from the formula above the class. */
class FaceCeilingTest {
  private static final FaceCeiling.Place PAPER = new FaceCeiling.Place(0.8, 0);
  private static final FaceCeiling.Place THIN = new FaceCeiling.Place(0.03, 0.5);
  private static final FaceCeiling.Place THICK = new FaceCeiling.Place(0.01, 2);
  private static final FaceCeiling CEILING = new FaceCeiling(List.of(PAPER, THIN, THICK));

  @Test
  void theThickCoatDecidesAtFirst() {
    assertThat(CEILING.at(0)).isCloseTo(0.0095, within(1e-9));
    assertThat(CEILING.steepness(0)).isEqualTo(2);
    assertThat(CEILING.at(0.5)).isCloseTo(0.0095 * Math.E, within(1e-9));
  }

  @Test
  void aThinCoatDecidesAtMoreGloss() {
    // 0.0095 exp(2 g) passes 0.0285 exp(0.5 g) at g = ln 3 / 1.5 = 0.7324.
    assertThat(CEILING.at(0.8)).isCloseTo(0.0285 * Math.exp(0.4), within(1e-9));
    assertThat(CEILING.steepness(0.8)).isEqualTo(0.5);
  }

  @Test
  void noFaceThrowsBackMoreThanATwentieth() {
    assertThat(CEILING.at(5)).isEqualTo(0.05);
    assertThat(CEILING.steepness(5)).isZero();
    assertThat(new FaceCeiling(List.of(PAPER)).at(0)).isEqualTo(0.05);
  }
}
