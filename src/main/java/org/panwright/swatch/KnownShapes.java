package org.panwright.swatch;

import java.util.List;
import java.util.Map;
import org.panwright.colour.Bands;
import org.panwright.paint.Optics;

/**
 * What is known of paints before any swatch is read: the run of K and S over wavelength of the
 * pigments in them.
 *
 * <pre>
 * Σ paints { holdK Σ (ln K − ln K known − a)² + holdS Σ (ln S − ln S known − b)²
 *            + (a / spread a)² + (b / spread b)² }
 * </pre>
 *
 * <p>a and b are unknowns: how much stronger and how much more covering this make is than the
 * usual. So the known shape speaks where the swatches say nothing and gives way where they speak.
 */
final class KnownShapes {
  /** Nothing is known of any paint. */
  static final KnownShapes NONE = new KnownShapes(Map.of(), List.of());

  /** Chosen on invented coats and on measured ones: docs/decisions/0035. */
  private static final double HOLD_ABSORPTION = 0.1;

  private static final double HOLD_SCATTERING = 0.2;
  private static final double SPREAD_ABSORPTION = 1.5;
  private static final double SPREAD_SCATTERING = 1.5;
  private static final double LEAST = 1e-4;

  private final double[][] lnAbsorption;
  private final double[][] lnScattering;

  /**
   * @param known optics per unit load, by paint
   * @param paints the paints of the fit in the order of their numbers
   */
  KnownShapes(Map<String, Optics> known, List<String> paints) {
    lnAbsorption = new double[paints.size()][];
    lnScattering = new double[paints.size()][];
    for (int paint = 0; paint < paints.size(); paint++) {
      Optics optics = known.get(paints.get(paint));
      if (optics != null) {
        lnAbsorption[paint] = logarithms(optics.absorption().toArray());
        lnScattering[paint] = logarithms(optics.scattering().toArray());
      }
    }
  }

  private static double[] logarithms(double[] values) {
    double[] logarithms = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      logarithms[i] = Math.log(Math.max(LEAST, values[i]));
    }
    return logarithms;
  }

  /** Whether anything is known of any paint. */
  boolean any() {
    for (double[] known : lnAbsorption) {
      if (known != null) {
        return true;
      }
    }
    return false;
  }

  /** Whether anything is known of a paint. */
  boolean knows(int paint) {
    return paint < lnAbsorption.length && lnAbsorption[paint] != null;
  }

  /** ln K known of a paint in a band per unit load; 0 if nothing is known. */
  double absorption(int paint, int band) {
    return knows(paint) ? lnAbsorption[paint][band] : 0;
  }

  /** ln S known of a paint in a band per unit load; 0 if nothing is known. */
  double scattering(int paint, int band) {
    return knows(paint) ? lnScattering[paint][band] : 0;
  }

  /**
   * Adds what is known to the equations and answers the sum of squares.
   *
   * @param usualLoad the load that counts as 1 among the unknowns
   */
  double addTo(Equations equations, Unknowns unknowns, double usualLoad) {
    double unit = Math.log(usualLoad);
    double squares = 0;
    for (int paint = 0; paint < lnAbsorption.length; paint++) {
      int a = unknowns.absorptionScale(paint);
      int b = unknowns.scatteringScale(paint);
      squares += spread(equations, unknowns, a, SPREAD_ABSORPTION);
      squares += spread(equations, unknowns, b, SPREAD_SCATTERING);
      for (int band = 0; knows(paint) && band < Bands.COUNT; band++) {
        squares +=
            hold(
                equations,
                unknowns,
                new int[] {unknowns.absorption(paint, band), a},
                lnAbsorption[paint][band] + unit,
                HOLD_ABSORPTION);
        squares +=
            hold(
                equations,
                unknowns,
                new int[] {unknowns.scattering(paint, band), b},
                lnScattering[paint][band] + unit,
                HOLD_SCATTERING);
      }
    }
    return squares;
  }

  /** Starts the two distances of each paint known where its curves start. */
  void start(Unknowns unknowns, double usualLoad) {
    double unit = Math.log(usualLoad);
    for (int paint = 0; paint < lnAbsorption.length; paint++) {
      if (!knows(paint)) {
        continue;
      }
      double a = 0;
      double b = 0;
      for (int band = 0; band < Bands.COUNT; band++) {
        a += unknowns.at(unknowns.absorption(paint, band)) - lnAbsorption[paint][band] - unit;
        b += unknowns.at(unknowns.scattering(paint, band)) - lnScattering[paint][band] - unit;
      }
      unknowns.start(unknowns.absorptionScale(paint), a / Bands.COUNT);
      unknowns.start(unknowns.scatteringScale(paint), b / Bands.COUNT);
    }
  }

  private static double hold(
      Equations equations, Unknowns unknowns, int[] columns, double known, double weight) {
    double off = unknowns.at(columns[0]) - known - unknowns.at(columns[1]);
    equations.add(columns, new double[] {1, -1}, off, weight);
    return weight * off * off;
  }

  private static double spread(Equations equations, Unknowns unknowns, int unknown, double spread) {
    double off = unknowns.at(unknown);
    double weight = 1 / (spread * spread);
    equations.add(new int[] {unknown}, new double[] {1}, off, weight);
    return weight * off * off;
  }
}
