package org.panwright.swatch.fit;

import java.util.List;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;

/**
 * Coats computed by another path than the engine's: the hyperbolic form printed by P. Kubelka,
 * Journal of the Optical Society of America 38, 1948, page 448, and Saunderson's surface.
 *
 * <pre>R = (1 − g (a − b coth bSX)) / (a − g + b coth bSX),  a = 1 + K/S,  b = √(a² − 1)</pre>
 */
public final class HyperbolicCoat {
  private HyperbolicCoat() {}

  /** One paint of a coat. */
  public record Layer(Spectrum k, Spectrum s, double load) {}

  /** The inner reflectance in one band. */
  public static double inside(double k, double s, double g) {
    double a = 1 + k / s;
    double b = Math.sqrt(a * a - 1);
    double coth = 1 / Math.tanh(b * s);
    return (1 - g * (a - b * coth)) / (a - g + b * coth);
  }

  /** The reflectance seen of a mixed coat on paper. */
  public static Spectrum seen(List<Layer> layers, Spectrum paper, Surface surface) {
    return Spectrum.ofBands(
        band -> {
          double k = layers.stream().mapToDouble(l -> l.load() * l.k().at(band)).sum();
          double s = layers.stream().mapToDouble(l -> l.load() * l.s().at(band)).sum();
          double seen = surface.seen();
          double k2 = surface.inner();
          double through = paper.at(band) - seen;
          double g = through / (1 - seen - k2 * (1 - paper.at(band)));
          double r = inside(k, s, g);
          return seen + (1 - seen) * (1 - k2) * r / (1 - k2 * r);
        });
  }
}
