package org.panwright.colour;

/**
 * Light-linear sRGB coordinates, unlimited: outside 0..1 the screen cannot show the colour.
 *
 * <p>The stage between tristimulus values and {@link Srgb}; what a picture's samples stand for once
 * they are decoded.
 */
public record LinearSrgb(double red, double green, double blue) {
  /** Room for rounding when asking whether a colour fits: far below one step of 1/255. */
  private static final double TOLERANCE = 1e-4;

  /** The inverse of the IEC 61966-2-1 primaries (rational form as in CSS Color 4). */
  public static LinearSrgb ofXyzD65(Xyz xyz) {
    return new LinearSrgb(
        12831.0 / 3959 * xyz.x() - 329.0 / 214 * xyz.y() - 1974.0 / 3959 * xyz.z(),
        -851781.0 / 878810 * xyz.x() + 1648619.0 / 878810 * xyz.y() + 36519.0 / 878810 * xyz.z(),
        705.0 / 12673 * xyz.x() - 2585.0 / 12673 * xyz.y() + 705.0 / 667 * xyz.z());
  }

  /** The tristimulus values (D65) of these coordinates; inverse of {@link #ofXyzD65}. */
  public Xyz toXyzD65() {
    return new Xyz(
        506752.0 / 1228815 * red + 87881.0 / 245763 * green + 12673.0 / 70218 * blue,
        87098.0 / 409605 * red + 175762.0 / 245763 * green + 12673.0 / 175545 * blue,
        7918.0 / 409605 * red + 87881.0 / 737289 * green + 1001167.0 / 1053270 * blue);
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
