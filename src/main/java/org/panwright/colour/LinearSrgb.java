package org.panwright.colour;

/**
 * Light-linear sRGB coordinates, unlimited: outside 0..1 the screen cannot show the colour.
 *
 * <p>The stage between tristimulus values and {@link Srgb}; used to ask whether a colour fits.
 */
record LinearSrgb(double red, double green, double blue) {
  /** Room for rounding when asking whether a colour fits: far below one step of 1/255. */
  private static final double TOLERANCE = 1e-4;

  /** The inverse of the IEC 61966-2-1 primaries (rational form as in CSS Color 4). */
  static LinearSrgb ofXyzD65(Xyz xyz) {
    return new LinearSrgb(
        12831.0 / 3959 * xyz.x() - 329.0 / 214 * xyz.y() - 1974.0 / 3959 * xyz.z(),
        -851781.0 / 878810 * xyz.x() + 1648619.0 / 878810 * xyz.y() + 36519.0 / 878810 * xyz.z(),
        705.0 / 12673 * xyz.x() - 2585.0 / 12673 * xyz.y() + 705.0 / 667 * xyz.z());
  }

  boolean fits() {
    return Math.min(red, Math.min(green, blue)) >= -TOLERANCE
        && Math.max(red, Math.max(green, blue)) <= 1 + TOLERANCE;
  }

  Srgb clipped() {
    return new Srgb(encodeWithin(red), encodeWithin(green), encodeWithin(blue));
  }

  private static double encodeWithin(double linear) {
    return Math.min(1, Math.max(0, Srgb.encode(Math.min(1, Math.max(0, linear)))));
  }
}
