package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paper;

class KnownPaintTest {
  private static final Spectrum K =
      Spectrum.ofWavelengths(nm -> 0.3 + 6 * Math.exp(-Math.pow((nm - 620) / 70, 2)));
  private static final KnownPaint BLUE =
      new KnownPaint(new Optics(K, Spectrum.flat(0.3), OpticsSource.PIGMENTS, 9), false);

  @Test
  void aHidingCoatLooksAsBeforeByAGlossierFace() {
    KnownPaint smoothed = BLUE.smoothed(0.8);

    Spectrum before = hiding(BLUE.optics(), Surface.DRY);
    Spectrum after = hiding(smoothed.optics(), Surface.DRY.smoothed(0.8));

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(after.at(band)).isCloseTo(before.at(band), within(1e-6));
    }
    assertThat(smoothed.optics().absorption()).isEqualTo(K);
    assertThat(smoothed.optics().gloss()).isEqualTo(0.8);
  }

  @Test
  void whatIsMattStaysAsItIs() {
    assertThat(BLUE.smoothed(0)).isSameAs(BLUE);
  }

  /** Forty coats on each other, by Kubelka's hyperbolic form. */
  private static Spectrum hiding(Optics optics, Surface face) {
    HyperbolicCoat.Layer layer =
        new HyperbolicCoat.Layer(optics.absorption(), optics.scattering(), 40);
    return HyperbolicCoat.seen(List.of(layer), Paper.WHITE.reflectance(), face);
  }
}
