package org.panwright.swatch.fit;

import org.panwright.colour.Bands;
import org.panwright.mixing.Surface;

/**
 * The numbers a fit looks for, in one row: ln K of each paint and band, ln S of each paint and
 * band, three for the face of the coats, one for the usual ln S of the set; where asked for, two
 * for each paint that say how far K and S lie from what is known of its pigments and one for how
 * heavily the coats are laid, and ln of the factor by which each doubtful load is off.
 *
 * <p>Loads count in usual coats here, so that no number depends on the painter's unit. The face is
 * held by an angle-like number u instead of k1, which keeps every face between 0 and the darkest
 * reading:
 *
 * <pre>k1 = ceiling(gloss) / (1 + e^−u)</pre>
 */
final class Unknowns {
  private static final int BANDS = Bands.COUNT;
  private static final double LONGEST_STEP = 1.5;
  private static final double LOWEST_LOG = -14;
  private static final double HIGHEST_LOG = 8;
  private static final double HIGHEST_K2 = 0.75;
  private static final double FARTHEST_LOAD = Math.log(6);

  private final int paints;
  private final FaceCeiling ceiling;
  private final int doubtful;
  private final double[] values;

  private Unknowns(int paints, FaceCeiling ceiling, int doubtful, double[] values) {
    this.paints = paints;
    this.ceiling = ceiling;
    this.doubtful = doubtful;
    this.values = values;
  }

  /**
   * Unknowns, all at 0.
   *
   * @param ceiling k1 stays below it
   * @param shaped whether each paint has its two distances from what is known, and the set its
   *     heaviness
   * @param doubtful how many loads are in doubt
   */
  static Unknowns of(int paints, FaceCeiling ceiling, boolean shaped, int doubtful) {
    int shapes = shaped ? 2 * paints + 1 : 0;
    double[] values = new double[2 * paints * BANDS + 4 + shapes + doubtful];
    return new Unknowns(paints, ceiling, doubtful, values);
  }

  int size() {
    return values.length;
  }

  int paints() {
    return paints;
  }

  double at(int unknown) {
    return values[unknown];
  }

  /** Sets a starting value. */
  void start(int unknown, double value) {
    values[unknown] = value;
  }

  /** The number of ln K of a paint in a band. */
  int absorption(int paint, int band) {
    return paint * BANDS + band;
  }

  /** The number of ln S of a paint in a band. */
  int scattering(int paint, int band) {
    return (paints + paint) * BANDS + band;
  }

  /** The number of u, which stands for k1. */
  int face() {
    return 2 * paints * BANDS;
  }

  /** The number of k2. */
  int inner() {
    return face() + 1;
  }

  /** The number of the gloss. */
  int gloss() {
    return face() + 2;
  }

  /** The number of the usual ln S of the set's paints. */
  int usual() {
    return face() + 3;
  }

  /** The number of the distance of a paint's ln K from what is known; only if shaped. */
  int absorptionScale(int paint) {
    return usual() + 1 + 2 * paint;
  }

  /** The number of the distance of a paint's ln S from what is known; only if shaped. */
  int scatteringScale(int paint) {
    return absorptionScale(paint) + 1;
  }

  /** The number of ln of how many usual coats the painter's coats are; only if shaped. */
  int heaviness() {
    return absorptionScale(paints);
  }

  /** The number of ln of the factor of a doubtful load, counted from the last one back. */
  int loadFactor(int fromLast) {
    return values.length - 1 - fromLast;
  }

  /** The face of a bare ground these numbers stand for. */
  Surface surface() {
    return Surface.saunderson(
        ceiling.at(values[gloss()]) / (1 + Math.exp(-values[face()])), values[inner()]);
  }

  /** ∂k1/∂u. */
  double k1Slope() {
    double k1 = surface().seen();
    return k1 * (1 - k1 / ceiling.at(values[gloss()]));
  }

  /** ∂ ln k1 / ∂ gloss, as the ceiling rises with the gloss. */
  double k1ByGloss() {
    return ceiling.steepness(values[gloss()]);
  }

  /** The unknowns a step further, no number by more than a safe length or out of its range. */
  Unknowns plus(double[] step) {
    double[] next = values.clone();
    for (int i = 0; i < next.length; i++) {
      next[i] += Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step[i]));
      if (i < face()) {
        next[i] = Math.max(LOWEST_LOG, Math.min(HIGHEST_LOG, next[i]));
      }
    }
    for (int i = next.length - doubtful; i < next.length; i++) {
      next[i] = Math.max(-FARTHEST_LOAD, Math.min(FARTHEST_LOAD, next[i]));
    }
    next[inner()] = Math.max(0, Math.min(HIGHEST_K2, next[inner()]));
    next[gloss()] = Math.max(0, next[gloss()]);
    return new Unknowns(paints, ceiling, doubtful, next);
  }
}
