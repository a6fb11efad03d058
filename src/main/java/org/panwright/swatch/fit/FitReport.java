package org.panwright.swatch.fit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Film;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;

/**
 * What came out of a fit: the optics of each paint, the face of the coats, and how far each swatch
 * is off.
 *
 * @param optics of each paint, per unit of the swatches' loads
 * @param surface the face of a bare ground; the gloss of {@code optics} smooths it
 * @param residuals one for each swatch, in their order
 */
public record FitReport(
    Map<String, Optics> optics, Surface surface, List<SwatchResidual> residuals) {
  public FitReport {
    optics = Collections.unmodifiableMap(new LinkedHashMap<>(optics));
    residuals = List.copyOf(residuals);
  }

  /**
   * The reflectance of a dry coat of these paints, mixed in the pan, over a ground.
   *
   * @throws IllegalArgumentException if a paint was not in the fit
   */
  public Spectrum predict(List<PaintLoad> paints, Reading ground) {
    return predict(optics, surface, paints, ground);
  }

  /** The face the coats were found to have. */
  public KnownFace face() {
    Map<String, Double> gloss = new LinkedHashMap<>();
    optics.forEach((paint, found) -> gloss.put(paint, found.gloss()));
    return new KnownFace(surface, gloss);
  }

  /** The median difference between the swatches and the fit, in CIEDE2000. */
  public double medianError() {
    double[] errors = residuals.stream().mapToDouble(SwatchResidual::ciede2000).sorted().toArray();
    int half = errors.length / 2;
    return errors.length % 2 == 1 ? errors[half] : (errors[half - 1] + errors[half]) / 2;
  }

  static Spectrum predict(
      Map<String, Optics> optics, Surface bare, List<PaintLoad> paints, Reading ground) {
    Film film = Film.NONE;
    for (PaintLoad share : paints) {
      Optics found = optics.get(share.paint());
      if (found == null) {
        throw new IllegalArgumentException("no optics were fitted for " + share.paint());
      }
      film = film.plus(found, share.load());
    }
    return film.seen(ground.reflectance(), bare);
  }
}
