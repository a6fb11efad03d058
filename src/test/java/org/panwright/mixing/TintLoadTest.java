package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;

class TintLoadTest {
  private static final Offset<Double> CLOSE = Offset.offset(1e-6);

  @Test
  void tintHas40PercentInItsDarkestVisibleBand() {
    // The specimen of ASTM D4303: 40 % reflectance at the wavelength of maximum absorption.
    for (Optics optics : new Optics[] {Samples.YELLOW, Samples.RED, Samples.BLUE, Samples.BLACK}) {
      double load = TintLoad.of(optics, Paper.WHITE);

      assertThat(darkest(Film.of(optics, load).dry(Paper.WHITE))).isCloseTo(0.40, CLOSE);
    }
  }

  @ParameterizedTest(name = "{0} times the pigment")
  @ValueSource(doubles = {0.5, 2, 10})
  void strongerPaintNeedsLessInProportion(double factor) {
    double plain = TintLoad.of(Samples.BLUE, Paper.WHITE);
    double strong = TintLoad.of(Samples.stronger(Samples.BLUE, factor), Paper.WHITE);

    assertThat(strong * factor / plain).isCloseTo(1.0, CLOSE);
  }

  @Test
  void whiteCountsByWhatItShowsOverBlack() {
    double load = TintLoad.of(Samples.WHITE, Paper.WHITE);
    Spectrum overBlack =
        Film.of(Samples.WHITE, load).over(Spectrum.flat(0)).map(Surface.DRY::outside);

    assertThat(overBlack.max()).isCloseTo(0.40, CLOSE);
  }

  @Test
  void paintThatDoesNeitherCountsAsItIs() {
    assertThat(TintLoad.of(Samples.optics(nm -> 0.001, nm -> 0.001, 5), Paper.WHITE)).isEqualTo(1);
    assertThat(TintLoad.of(Samples.optics(nm -> 0, nm -> 0, 5), Paper.WHITE)).isEqualTo(1);
  }

  private static double darkest(Spectrum seen) {
    double darkest = 1;
    for (int band = 0; band < Bands.COUNT; band++) {
      int nm = Bands.wavelengthNm(band);
      if (nm >= 400 && nm <= 700) {
        darkest = Math.min(darkest, seen.at(band));
      }
    }
    return darkest;
  }
}
