package org.panwright.mixing;

import org.panwright.colour.Lab;

/**
 * What the face of the paint film does to light on its way in and out (J. L. Saunderson, Journal of
 * the Optical Society of America 32, 1942, page 727).
 *
 * <pre>
 * R = seen + (1 − lost)(1 − inner) Ri / (1 − inner · Ri)
 * </pre>
 *
 * <p>In Saunderson's symbols {@code seen} = {@code lost} = k1 and {@code inner} = k2. They are kept
 * apart because a wet, smooth film still turns light back at its face, but into one mirror
 * direction where the eye does not stand.
 *
 * @param seen the share of light turned back at the face that reaches the eye, 0..0.2
 * @param lost the share turned back at the face, 0..0.2
 * @param inner the share of the light inside that the face turns back in, 0..0.9
 */
public record Surface(double seen, double lost, double inner) {
  /**
   * A dry, matt coat: k1 = 0.03 and k2 = 0.40 (within fitted practice of 0.02–0.04 and 0.4–0.6).
   */
  public static final Surface DRY = saunderson(0.03, 0.40);

  /**
   * A freshly wet coat under a film of water, seen in daylight from all around: 2 % turned back and
   * 2 % seen, inner reflection 0.47. Lowers L* of a dark by about 4 and of a light by about 2.5;
   * published measurements of 75 paints average 2.3.
   */
  public static final Surface WET = new Surface(0.02, 0.02, 0.47);

  /** Keeps a little light from inside even in the darkest reading. */
  public static final double BELOW_DARKEST = 0.95;

  public Surface {
    if (!(seen >= 0 && seen <= 0.2 && lost >= 0 && lost <= 0.2 && inner >= 0 && inner <= 0.9)) {
      throw new IllegalArgumentException(
          "surface shares out of range, were " + seen + ", " + lost + ", " + inner);
    }
  }

  /** A surface with Saunderson's constants k1 and k2. */
  public static Surface saunderson(double k1, double k2) {
    return new Surface(k1, k1, k2);
  }

  /**
   * The same face smoothed by the gum of a coat.
   *
   * <pre>k1 · exp(−gloss)</pre>
   *
   * <p>Example: {@link #DRY} at gloss 1 turns 0.0110 back instead of 0.03.
   *
   * @param gloss of the whole coat, that is Σ gloss · load; 0 leaves the face as it is
   */
  public Surface smoothed(double gloss) {
    if (gloss == 0) {
      return this;
    }
    double left = Math.exp(-gloss);
    return new Surface(seen * left, lost * left, inner);
  }

  /**
   * The same face, turning back no more than {@value #BELOW_DARKEST} of the darkest value that was
   * read of it: what is read has passed the face.
   *
   * @param darkest the lowest reflectance that was read, 0..1
   */
  public Surface below(double darkest) {
    double most = BELOW_DARKEST * darkest;
    return seen <= most ? this : new Surface(most, Math.min(lost, most), inner);
  }

  /**
   * The reflectance seen from outside for a reflectance inside the film.
   *
   * <p>Example: k1 = 0.04, k2 = 0.6, Ri = 0.5 gives 0.314286.
   */
  public double outside(double inside) {
    return seen + passed() * inside / (1 - inner * inside);
  }

  /**
   * The reflectance inside the film for one seen from outside; the inverse of {@link #outside}.
   *
   * <p>A reading below what the face alone turns back has no inside value; it answers 0.
   */
  public double inside(double outside) {
    double through = Math.max(0, outside - seen);
    return through / (passed() + inner * through);
  }

  /**
   * L* of a film that turns no light back, so that only its face is seen: nothing looks darker.
   *
   * <pre>
   * 116 f(seen) − 16
   * </pre>
   *
   * <p>Example: seen = 0.04 gives 23.67, as 0.04 = 0.341995³.
   */
  public double darkestL() {
    return 116 * Lab.f(seen) - 16;
  }

  /** (1 − lost)(1 − inner). */
  double passed() {
    return (1 - lost) * (1 - inner);
  }
}
