package org.panwright.mixing;

import java.util.function.DoublePredicate;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;

/**
 * The load at which a paint is a standard tint: the measure of its strength.
 *
 * <p>One strength part of every paint is the load at which its lowest reflectance between 400 and
 * 700 nm is {@value #TINT_REFLECTANCE} on the kit's paper. The 40 % tint is the specimen of ASTM
 * D4303 / D5067; equal tint loads are what painters call visually equal parts. A paint too pale to
 * get there by {@value #HEAVIEST} masstone coats (whites) counts by the load at which its brightest
 * band over black reaches the same figure; one that does neither counts as load 1.
 */
public final class TintLoad {
  /** The reflectance of the tint in its darkest band. */
  public static final double TINT_REFLECTANCE = 0.40;

  private static final double HEAVIEST = 4;
  private static final int HALVINGS = 50;

  private TintLoad() {}

  /** The load of one strength part of a paint on a paper, above 0. */
  public static double of(Optics optics, Paper paper) {
    Spectrum ground = Film.ground(paper);
    DoublePredicate deep = load -> lowest(optics, load, ground) <= TINT_REFLECTANCE;
    if (deep.test(HEAVIEST)) {
      return threshold(deep);
    }
    DoublePredicate covers = load -> brightestOverBlack(optics, load) >= TINT_REFLECTANCE;
    return covers.test(HEAVIEST) ? threshold(covers) : 1;
  }

  /**
   * The smallest load up to {@link #HEAVIEST} for which {@code reached} holds, by bisection in ln
   * load.
   */
  private static double threshold(DoublePredicate reached) {
    double below = Math.log(1e-6);
    double above = Math.log(HEAVIEST);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (below + above) / 2;
      if (reached.test(Math.exp(middle))) {
        above = middle;
      } else {
        below = middle;
      }
    }
    return Math.exp(above);
  }

  private static double lowest(Optics optics, double load, Spectrum ground) {
    double lowest = 1;
    for (int band = 0; band < Bands.COUNT; band++) {
      if (isVisible(band)) {
        lowest = Math.min(lowest, seen(optics, band, load, ground.at(band)));
      }
    }
    return lowest;
  }

  private static double brightestOverBlack(Optics optics, double load) {
    double brightest = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      if (isVisible(band)) {
        brightest = Math.max(brightest, seen(optics, band, load, 0));
      }
    }
    return brightest;
  }

  private static double seen(Optics optics, int band, double load, double ground) {
    return Surface.DRY
        .smoothed(optics.gloss() * load)
        .outside(
            Coat.reflectance(
                optics.absorption().at(band), optics.scattering().at(band), load, ground));
  }

  private static boolean isVisible(int band) {
    int nm = Bands.wavelengthNm(band);
    return nm >= 400 && nm <= 700;
  }
}
