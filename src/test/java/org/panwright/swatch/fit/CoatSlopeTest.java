package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.panwright.Tolerance.REFLECTANCE;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoatSlopeTest {
  private static final double STEP = 1e-5;

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    // worked by hand from the hyperbolic form of Kubelka 1948
    "even K and S, 1, 1, 0.8, 0.287513850",
    "a usual coat, 0.5, 0.2, 0.85, 0.345430093",
    "a dark coat, 1, 0.025, 0.85, 0.121086745",
    "a white coat, 0.05, 2, 0.85, 0.821763496"
  })
  void reflectanceIsThatOfKubelka(String name, double k, double s, double g, double expected) {
    assertThat(CoatSlope.at(k, s, g).reflectance()).isCloseTo(expected, REFLECTANCE);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "thin, 0.02, 0.01, 0.85",
    "usual, 0.5, 0.2, 0.85",
    "hiding, 4, 3, 0.6",
    "dark, 9, 0.1, 0.8",
    "white over black, 0.05, 2, 0.02"
  })
  void slopesAreThoseOfTheHyperbolicForm(String name, double k, double s, double g) {
    CoatSlope slope = CoatSlope.at(k, s, g);

    assertThat(slope.byAbsorption())
        .isCloseTo(
            (HyperbolicCoat.inside(k * (1 + STEP), s, g)
                    - HyperbolicCoat.inside(k * (1 - STEP), s, g))
                / (2 * STEP * k),
            within(1e-6));
    assertThat(slope.byScattering())
        .isCloseTo(
            (HyperbolicCoat.inside(k, s * (1 + STEP), g)
                    - HyperbolicCoat.inside(k, s * (1 - STEP), g))
                / (2 * STEP * s),
            within(1e-6));
    assertThat(slope.byGround())
        .isCloseTo(
            (HyperbolicCoat.inside(k, s, g + STEP) - HyperbolicCoat.inside(k, s, g - STEP))
                / (2 * STEP),
            within(1e-6));
  }
}
