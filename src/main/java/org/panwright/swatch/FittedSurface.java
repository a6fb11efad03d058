package org.panwright.swatch;

import org.panwright.mixing.Surface;

/**
 * The face of the measured coats as their instrument saw it: Saunderson's constants, where the gum
 * of a thick coat leaves less dull reflection than bare paper.
 *
 * <pre>k1(X) = k1 · exp(−gloss · X)</pre>
 *
 * @param k1 the share turned back at the face of bare paper, 0..0.2
 * @param k2 the share of the light inside turned back in, 0..0.9
 * @param gloss how fast k1 falls with the whole load X of a coat, per unit of load, 0 or more
 */
public record FittedSurface(double k1, double k2, double gloss) {
  /** The plain surface of the engine: {@link Surface#DRY} at every load. */
  public static final FittedSurface DRY =
      new FittedSurface(Surface.DRY.seen(), Surface.DRY.inner(), 0);

  public FittedSurface {
    if (!(gloss >= 0 && Double.isFinite(gloss))) {
      throw new IllegalArgumentException("gloss must not be negative, was " + gloss);
    }
  }

  /** The face of a coat with a whole load of {@code load}; 0 is bare paper. */
  public Surface at(double load) {
    return Surface.saunderson(k1 * Math.exp(-gloss * load), k2);
  }
}
