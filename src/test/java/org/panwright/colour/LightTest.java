package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.Tolerance;

class LightTest {
  @ParameterizedTest(name = "{0}: {1}, 100, {2}")
  @CsvSource({
    // CIE 015, tristimulus values of the illuminants for the 1931 observer, as in ASTM E308.
    "D65, 95.047, 108.883",
    "D50, 96.422, 82.521",
  })
  void whiteIsThatOfTheStandard(Light light, double x, double z) {
    assertThat(light.white().x() * 100).isCloseTo(x, Tolerance.WHITE_XYZ);
    assertThat(light.white().y()).isCloseTo(1.0, Tolerance.XYZ);
    assertThat(light.white().z() * 100).isCloseTo(z, Tolerance.WHITE_XYZ);
  }

  @ParameterizedTest
  @EnumSource
  void perfectDiffuserIsLabWhite(Light light) {
    Lab white = light.lab(Spectrum.flat(1));

    assertThat(white.l()).isCloseTo(100.0, Tolerance.ROUND_TRIP);
    assertThat(white.chroma()).isCloseTo(0.0, Tolerance.ROUND_TRIP);
  }

  @ParameterizedTest
  @EnumSource
  void greyScalesWithReflectance(Light light) {
    Xyz half = light.xyz(Spectrum.flat(0.5));

    assertThat(half.x()).isCloseTo(light.white().x() / 2, Tolerance.XYZ);
    assertThat(half.y()).isCloseTo(0.5, Tolerance.XYZ);
    assertThat(half.z()).isCloseTo(light.white().z() / 2, Tolerance.XYZ);
  }

  /** A straight line in wavelength, held at its ends: the rule of the weights makes it exact. */
  @ParameterizedTest
  @EnumSource
  void bandWeightsSumARampLikeTheWholeTable(Light light) {
    StandardTable observer = StandardTable.observer();
    StandardTable power =
        StandardTable.read(light == Light.D65 ? "light-d65.csv" : "light-d50.csv");
    double sum = 0;
    double white = 0;
    for (int row = 0; row < observer.rows(); row++) {
      double nm = observer.wavelengthNm(row);
      double energy = power.valueAt(nm);
      sum += energy * observer.value(row, 0) * ramp(nm);
      white += energy * observer.value(row, 1);
    }

    assertThat(light.xyz(Spectrum.ofWavelengths(LightTest::ramp)).x())
        .isCloseTo(sum / white, Tolerance.XYZ);
  }

  private static double ramp(double nm) {
    return (Math.min(730, Math.max(380, nm)) - 380) / 350;
  }

  @ParameterizedTest(name = "light returned at {0} nm looks {1}")
  @CsvSource({
    // The spectral colours of daylight in order of wavelength (any textbook of optics).
    "450, VIOLET_BLUE, VIOLET",
    "530, GREEN, BLUISH_GREEN",
    "580, GOLDEN_YELLOW, GREENISH_YELLOW",
    "650, ROSE, ORANGE_RED",
  })
  void narrowBandsLookLikeTheirPlaceInTheRainbow(int nm, HueWord from, HueWord to) {
    Spectrum band = Spectrum.ofWavelengths(at -> Math.abs(at - nm) <= 10 ? 0.9 : 0.05);
    HueWord word = HueWord.of(Oklab.ofD65(Light.D65.xyz(band)).toOklch().hueDeg());

    assertThat(word).isBetween(from, to);
  }

  @Test
  void weightsAreCopies() {
    double[] weights = Light.D65.weights(1);
    weights[0] = 99;

    assertThat(Light.D65.weights(1)[0]).isNotEqualTo(99);
  }

  @Test
  void tableThatIsMissingIsNamed() {
    assertThatThrownBy(() -> StandardTable.read("no-such-light.csv"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("no-such-light.csv");
  }

  @Test
  void wavelengthATableLacksIsNamed() {
    assertThatThrownBy(() -> StandardTable.observer().valueAt(361))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("361");
  }
}
