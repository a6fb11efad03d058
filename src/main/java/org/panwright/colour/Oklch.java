package org.panwright.colour;

/**
 * A colour by Oklab lightness (0..1), chroma (0 to about 0.4) and hue angle in degrees (0 inclusive
 * to 360).
 *
 * <p>The hue circle of the whole program: hue rings, gaps and hue words use this angle, because it
 * keeps blues blue where CIELAB turns them violet.
 */
public record Oklch(double l, double c, double hueDeg) {
  /** Below this chroma a colour has no hue worth naming. */
  public static final double NEUTRAL_CHROMA = 0.02;

  public Oklch {
    Finite.require("Oklch", l, c, hueDeg);
    if (c < 0) {
      throw new IllegalArgumentException("chroma must not be negative, was " + c);
    }
    hueDeg = Hue.normal(hueDeg);
  }

  /** The same colour by its a and b coordinates. */
  public Oklab toOklab() {
    double radians = Math.toRadians(hueDeg);
    return new Oklab(l, c * Math.cos(radians), c * Math.sin(radians));
  }

  /** The same lightness and hue with another chroma. */
  public Oklch withChroma(double chroma) {
    return new Oklch(l, chroma, hueDeg);
  }

  /** Whether the colour is so grey that its hue angle means nothing to the eye. */
  public boolean isNeutral() {
    return c < NEUTRAL_CHROMA;
  }
}
