package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.Tolerance;
import org.panwright.colour.Bands;
import org.panwright.colour.Difference;
import org.panwright.colour.Hue;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paper;

class MixerTest {
  private static final Mixer MIXER = new Mixer(Samples.TABLE);

  @Test
  void paintMixedWithItselfIsItself() {
    OpticsTable twins =
        OpticsTable.of(List.of("one", "other"), List.of(Samples.BLUE, Samples.BLUE), Paper.WHITE);
    Mixer mixer = new Mixer(twins);
    Spectrum alone = mixer.dry(Recipe.of("one"), 0.3);
    Spectrum mixed = mixer.dry(Recipe.of("one", 2, "other", 5), 0.3);

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(mixed.at(band)).isCloseTo(alone.at(band), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void orderOfPartsIsNothing() {
    Lab one = MIXER.lab(Recipe.of("yellow", 3, "blue", 1), 0.25);
    Lab other = MIXER.lab(Recipe.of("blue", 1, "yellow", 3), 0.25);

    assertThat(Difference.ab(one, other)).isCloseTo(0.0, Tolerance.ROUND_TRIP);
  }

  @Test
  void onlyTheRatioOfPartsCounts() {
    Lab small = MIXER.lab(Recipe.of("yellow", 3, "blue", 1), 0.25);
    Lab large = MIXER.lab(Recipe.of("yellow", 30, "blue", 10), 0.25);

    assertThat(Difference.ab(small, large)).isCloseTo(0.0, Tolerance.ROUND_TRIP);
  }

  @ParameterizedTest
  @ValueSource(strings = {"yellow", "red", "blue", "black"})
  void moreLoadNeverLightens(String paint) {
    double before = 100;
    for (double load = 0.01; load < 4; load *= 1.3) {
      double now = MIXER.lab(Recipe.of(paint), load).l();
      assertThat(now).isLessThanOrEqualTo(before);
      before = now;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"yellow", "red", "blue", "white", "black"})
  void wetIsNeverLighterThanDry(String paint) {
    for (double load : new double[] {0.04, 0.25, 1}) {
      Recipe recipe = Recipe.of(paint);
      double wet = Light.D65.lab(MIXER.wet(recipe, load)).l();

      assertThat(wet).isLessThan(MIXER.lab(recipe, load).l());
    }
  }

  @Test
  void equalPartsAreEqualStrengthNotEqualVolume() {
    OpticsTable table =
        OpticsTable.of(
            List.of("plain", "strong"),
            List.of(Samples.BLUE, Samples.stronger(Samples.BLUE, 4)),
            Paper.WHITE);
    double[] volumes = new Mixer(table).volumes(Recipe.of("plain", 1, "strong", 1));

    // Four times the pigment: a quarter of the volume does the same.
    assertThat(volumes[0]).isCloseTo(0.8, Offset.offset(1e-6));
    assertThat(volumes[1]).isCloseTo(0.2, Offset.offset(1e-6));
  }

  @Test
  void yellowAndBlueMakeGreen() {
    // Common practice.
    Spectrum green = MIXER.dry(Recipe.of("yellow", 1, "blue", 1), 0.25);
    double hue = Oklab.ofD65(Light.D65.xyz(green)).toOklch().hueDeg();

    assertThat(Hue.between(hue, 142)).isLessThan(30);
  }

  @Test
  void whiteMakesAMasstoneLighter() {
    // Common practice.
    assertThat(MIXER.lab(Recipe.of("blue", 1, "white", 1), 1).l())
        .isGreaterThan(MIXER.lab(Recipe.of("blue"), 1).l());
  }

  @Test
  void expectedErrorOfOnePaintIsItsOwn() {
    assertThat(MIXER.expectedError(Recipe.of("red"))).isCloseTo(9.0, Tolerance.ROUND_TRIP);
  }

  @Test
  void expectedErrorOfAMixAddsTheErrorOfTheLaw() {
    Recipe recipe = Recipe.of("red", 1, "blue", 1);
    double[] volumes = MIXER.volumes(recipe);
    // E² = Σ vᵢ Eᵢ² + 2.5², with 9 for the red and 4 for the blue.
    double expected = Math.sqrt(volumes[0] * 81 + volumes[1] * 16 + 6.25);

    assertThat(MIXER.expectedError(recipe)).isCloseTo(expected, Tolerance.ROUND_TRIP);
  }

  @Test
  void aMixIsTrustedAsItsLeastCertainPaint() {
    OpticsTable table =
        OpticsTable.of(
            List.of("file", "own", "named"),
            List.of(
                known(OpticsSource.SPECTRA),
                known(OpticsSource.SWATCHES),
                known(OpticsSource.PIGMENTS)),
            Paper.WHITE);
    Mixer mixer = new Mixer(table);

    assertThat(mixer.trust(Recipe.of("file")).source()).isEqualTo(OpticsSource.SPECTRA);
    assertThat(mixer.trust(Recipe.of("own", 1, "file", 5)).source())
        .isEqualTo(OpticsSource.SWATCHES);
    assertThat(mixer.trust(Recipe.of("named", 1, "own", 5)).source())
        .isEqualTo(OpticsSource.PIGMENTS);
    assertThat(mixer.trust(Recipe.of("own", "own", Ratio.GRID.get(Ratio.EVEN))))
        .isEqualTo(new Trust(OpticsSource.SWATCHES, Samples.BLUE.expectedError()));
  }

  private static Optics known(OpticsSource source) {
    Optics blue = Samples.BLUE;
    return new Optics(blue.absorption(), blue.scattering(), source, blue.expectedError());
  }

  @Test
  void paintThatIsNotThereIsNamed() {
    assertThatThrownBy(() -> MIXER.lab(Recipe.of("green"), 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("green");
  }
}
