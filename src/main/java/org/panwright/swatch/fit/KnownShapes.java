package org.panwright.swatch.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.panwright.colour.Bands;
import org.panwright.swatch.squares.Equations;

/**
 * What is known of paints before any swatch is read: the run of K and S over wavelength of the
 * pigments in them.
 *
 * <pre>
 * Σ paints { holdK Σ (ln K − ln K known − a)² + holdS Σ (ln S − ln S known − b)²
 *            + ((a − h) / spread a)² + ((b − h) / spread b)² }  +  (h / spread h)²
 * </pre>
 *
 * <p>a and b are unknowns: how much stronger and how much more covering this make is than the
 * usual. So the known shape speaks where the swatches say nothing and gives way where they speak. h
 * is one unknown for all paints: a hand that lays paint twice as heavily finds every paint twice as
 * strong and twice as covering, an admixture that is only named as well.
 */
final class KnownShapes {
  /** Chosen on invented coats and on measured ones: docs/decisions/0035. */
  private static final Firmness TO_BE_LEARNT = new Firmness(0.05, 0.1, 1, 1.5);

  private static final Firmness TAKEN_AS_NAMED = new Firmness(4, 4, 0.4, 0.4);
  private static final double SPREAD_HEAVINESS = 2;
  private static final double LEAST = 1e-4;

  private final double[][] lnAbsorption;
  private final double[][] lnScattering;
  private final Firmness[] firmness;

  /** How closely a paint is expected to follow what is known of it. */
  private record Firmness(double holdK, double holdS, double spreadK, double spreadS) {}

  /**
   * @param known by paint
   * @param paints the paints of the fit in the order of their numbers
   */
  KnownShapes(Map<String, KnownPaint> known, List<String> paints) {
    lnAbsorption = new double[paints.size()][];
    lnScattering = new double[paints.size()][];
    firmness = new Firmness[paints.size()];
    for (int paint = 0; paint < paints.size(); paint++) {
      KnownPaint found = known.get(paints.get(paint));
      firmness[paint] = found != null && found.firm() ? TAKEN_AS_NAMED : TO_BE_LEARNT;
      if (found != null) {
        lnAbsorption[paint] = logarithms(found.optics().absorption().toArray());
        lnScattering[paint] = logarithms(found.optics().scattering().toArray());
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
    double squares = heaviness(equations, unknowns);
    for (int paint = 0; paint < lnAbsorption.length; paint++) {
      Firmness firm = firmness[paint];
      int a = unknowns.absorptionScale(paint);
      int b = unknowns.scatteringScale(paint);
      squares += spread(equations, unknowns, a, firm.spreadK());
      squares += spread(equations, unknowns, b, firm.spreadS());
      for (int band = 0; knows(paint) && band < Bands.COUNT; band++) {
        int[] k = {unknowns.absorption(paint, band), a};
        int[] s = {unknowns.scattering(paint, band), b};
        double knownK = lnAbsorption[paint][band] + unit;
        double knownS = lnScattering[paint][band] + unit;
        squares += hold(equations, unknowns, k, knownK, firm.holdK());
        squares += hold(equations, unknowns, s, knownS, firm.holdS());
      }
    }
    return squares;
  }

  /**
   * Starts S of each paint known level, half way in its logarithm between a usual coat and what is
   * known, and the two distances where the curves start. From either end some paints of two coats
   * find their way into a wrong valley.
   */
  void start(Unknowns unknowns, double usualLoad) {
    double unit = Math.log(usualLoad);
    for (int paint = 0; paint < lnAbsorption.length; paint++) {
      if (!knows(paint)) {
        continue;
      }
      double known = Arrays.stream(lnScattering[paint]).average().orElseThrow() + unit;
      double a = 0;
      for (int band = 0; band < Bands.COUNT; band++) {
        unknowns.start(unknowns.scattering(paint, band), known / 2);
        a += unknowns.at(unknowns.absorption(paint, band)) - lnAbsorption[paint][band] - unit;
      }
      unknowns.start(unknowns.absorptionScale(paint), a / Bands.COUNT);
      unknowns.start(unknowns.scatteringScale(paint), -known / 2);
    }
  }

  private static double hold(
      Equations equations, Unknowns unknowns, int[] columns, double known, double weight) {
    double off = unknowns.at(columns[0]) - known - unknowns.at(columns[1]);
    equations.add(columns, new double[] {1, -1}, off, weight);
    return weight * off * off;
  }

  private static double spread(Equations equations, Unknowns unknowns, int scale, double spread) {
    return hold(
        equations, unknowns, new int[] {scale, unknowns.heaviness()}, 0, 1 / (spread * spread));
  }

  private static double heaviness(Equations equations, Unknowns unknowns) {
    int unknown = unknowns.heaviness();
    double off = unknowns.at(unknown);
    double weight = 1 / (SPREAD_HEAVINESS * SPREAD_HEAVINESS);
    equations.add(new int[] {unknown}, new double[] {1}, off, weight);
    return weight * off * off;
  }
}
