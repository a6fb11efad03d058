package org.panwright.paint;

import org.panwright.colour.Lab;

/**
 * How a paint's colour differs while it is wet, from readings of the same places wet and dry.
 *
 * @param lightness wet minus dry L*; usually below 0
 * @param a wet minus dry a*
 * @param b wet minus dry b*
 * @param dryLightness mean L* of the dry places read
 */
public record DryingShift(double lightness, double a, double b, double dryLightness) {
  /** The colour read wet, as far as this shift goes: {@code share} 0 none of it, 1 all of it. */
  public Lab wet(Lab dry, double share) {
    double l = Math.max(0, Math.min(100, dry.l() + share * lightness));
    return new Lab(l, dry.a() + share * a, dry.b() + share * b);
  }
}
