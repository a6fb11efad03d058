package org.panwright.analysis.mud;

import org.panwright.mixing.Recipe;
import org.panwright.paint.Wash;

/**
 * The darkest mix of some paints.
 *
 * @param recipe in strength parts
 * @param wash how strong it is painted
 * @param dryL CIELAB L* once dry, D65
 * @param wetL L* of the same coat while wet
 */
public record Dark(Recipe recipe, Wash wash, double dryL, double wetL) {
  /** A dry mix below this L* is a real dark (common practice). */
  public static final double REAL_BELOW = 25;

  /** Whether it is still a real dark once dry. */
  public boolean isReal() {
    return dryL < REAL_BELOW;
  }

  /** Whether it looks a real dark while wet and no longer once dry. */
  public boolean fadesOnDrying() {
    return wetL < REAL_BELOW && !isReal();
  }
}
