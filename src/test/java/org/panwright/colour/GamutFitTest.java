package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GamutFitTest {
  /** One step of 1/255 moves Oklab lightness and the hue of a chromatic colour by this at most. */
  private static final Offset<Double> LIGHTNESS = Offset.offset(2e-3);

  private static final Offset<Double> HUE_DEG = Offset.offset(0.5);

  @ParameterizedTest(name = "hue {0}°")
  @ValueSource(doubles = {0, 29, 60, 90, 110, 142, 170, 195, 230, 264, 300, 328})
  void tooMuchChromaIsTakenAwayAtTheSameHueAndLightness(double hueDeg) {
    Oklch wanted = new Oklch(0.6, 0.4, hueDeg);
    GamutFit fit = GamutFit.of(wanted);
    Oklch shown = Oklab.ofD65(fit.shown().toXyzD65()).toOklch();

    assertThat(fit.exact()).isFalse();
    assertThat(shown.l()).isCloseTo(wanted.l(), LIGHTNESS);
    assertThat(Hue.between(shown.hueDeg(), wanted.hueDeg())).isLessThan(HUE_DEG.value);
    assertThat(shown.c()).isBetween(0.05, 0.4);
  }

  @ParameterizedTest(name = "hue {0}°")
  @ValueSource(doubles = {0, 60, 110, 195, 264, 328})
  void shownColourLiesAtTheEdgeOfTheScreen(double hueDeg) {
    Srgb shown = GamutFit.of(new Oklch(0.6, 0.4, hueDeg)).shown();
    double low = Math.min(shown.red(), Math.min(shown.green(), shown.blue()));
    double high = Math.max(shown.red(), Math.max(shown.green(), shown.blue()));

    assertThat(Math.min(low, 1 - high)).isLessThan(2e-3);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.05, 30", "0.8, 0.02, 200", "0.2, 0.0, 0", "0.628, 0.2576, 29.23"})
  void colourThatFitsIsUntouched(double l, double c, double hueDeg) {
    Oklch wanted = new Oklch(l, c, hueDeg);
    GamutFit fit = GamutFit.of(wanted);
    Oklab shown = Oklab.ofD65(fit.shown().toXyzD65());

    assertThat(fit.exact()).isTrue();
    assertThat(shown.l()).isCloseTo(l, LIGHTNESS);
    assertThat(shown.a()).isCloseTo(wanted.toOklab().a(), LIGHTNESS);
    assertThat(shown.b()).isCloseTo(wanted.toOklab().b(), LIGHTNESS);
  }

  @Test
  void fittingTwiceChangesNothing() {
    Srgb once = GamutFit.of(new Oklch(0.7, 0.35, 145)).shown();
    GamutFit twice = GamutFit.ofXyzD65(once.toXyzD65());

    assertThat(twice.exact()).isTrue();
    assertThat(twice.shown().toHex()).isEqualTo(once.toHex());
  }

  @Test
  void lighterThanWhiteIsWhiteAndDarkerThanBlackIsBlack() {
    assertThat(GamutFit.of(new Oklch(1.2, 0.1, 90)))
        .isEqualTo(new GamutFit(new Srgb(1, 1, 1), false));
    assertThat(GamutFit.of(new Oklch(-0.1, 0.1, 90)))
        .isEqualTo(new GamutFit(new Srgb(0, 0, 0), false));
    assertThat(GamutFit.of(new Oklch(1, 0, 0))).isEqualTo(new GamutFit(new Srgb(1, 1, 1), true));
    assertThat(GamutFit.of(new Oklch(0, 0, 0))).isEqualTo(new GamutFit(new Srgb(0, 0, 0), true));
  }
}
