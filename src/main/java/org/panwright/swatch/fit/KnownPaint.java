package org.panwright.swatch.fit;

import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;

/**
 * What is known of a paint before any swatch is read.
 *
 * @param optics per unit load, as estimated from the names of its pigments
 * @param firm whether its curves are to be taken as they are, as nobody means to learn them from
 *     the swatches: a white or black that is only named
 */
public record KnownPaint(Optics optics, boolean firm) {
  private static final double LEAST = 1e-4;
  private static final double LIGHTEST = 0.999;

  /**
   * The same paint with a glossier coat: a hiding coat looks as before. What a matt face threw back
   * before, the paint is taken to scatter.
   *
   * <pre>
   * K′ = K,   S′ = 2 K Ri / (1 − Ri)²
   * Ri = inside by the smoothed face (outside by the matt face (R∞))
   * R∞ = 1 + K/S − √((K/S)² + 2 K/S)
   * </pre>
   *
   * <p>The library's curves were drawn for coats seen through the matt face, and say nothing of
   * light below it.
   */
  KnownPaint smoothed(double gloss) {
    if (gloss == 0) {
      return this;
    }
    Surface face = Surface.DRY.smoothed(gloss);
    Spectrum scattering =
        Spectrum.ofBands(
            band -> {
              double k = Math.max(LEAST, optics.absorption().at(band));
              double ratio = k / Math.max(LEAST, optics.scattering().at(band));
              double hiding = 1 + ratio - Math.sqrt(ratio * (ratio + 2));
              double inside = Math.min(LIGHTEST, face.inside(Surface.DRY.outside(hiding)));
              return 2 * k * inside / ((1 - inside) * (1 - inside));
            });
    return new KnownPaint(
        new Optics(optics.absorption(), scattering, gloss, optics.source(), optics.expectedError()),
        firm);
  }
}
