package org.panwright.colour;

/**
 * CIE 1931 tristimulus values on the relative scale where a perfect white diffuser has Y = 1.
 *
 * <p>CIE 015 states the same values times 100. Finite; not limited to a range, so that rounding
 * noise and differences can be carried.
 */
public record Xyz(double x, double y, double z) {
  public Xyz {
    Finite.require("XYZ", x, y, z);
  }

  /** The same colour as CIELAB against a white. */
  public Lab toLab(Xyz white) {
    return Lab.of(this, white);
  }

  /** The tristimulus values multiplied by {@code factor}. */
  public Xyz times(double factor) {
    return new Xyz(x * factor, y * factor, z * factor);
  }
}
