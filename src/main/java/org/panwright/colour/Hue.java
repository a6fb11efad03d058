package org.panwright.colour;

/** Arithmetic of hue angles in degrees. */
public final class Hue {
  private Hue() {}

  /** The angle of the vector ({@code x}, {@code y}) in degrees, 0 (inclusive) to 360. */
  public static double degrees(double y, double x) {
    return normal(Math.toDegrees(Math.atan2(y, x)));
  }

  /** The same angle in 0 (inclusive) to 360 (exclusive). */
  public static double normal(double hueDeg) {
    double turned = hueDeg % 360;
    if (turned < 0) {
      turned += 360;
    }
    return turned >= 360 ? 0 : turned;
  }

  /**
   * The way from {@code fromDeg} to {@code toDeg} in the direction of growing angles, 0 (inclusive)
   * to 360; from 350 to 10 it is 20.
   */
  public static double arc(double fromDeg, double toDeg) {
    return normal(toDeg - fromDeg);
  }

  /** The smaller angle between two hues, 0 to 180. */
  public static double between(double firstDeg, double secondDeg) {
    double arc = arc(firstDeg, secondDeg);
    return Math.min(arc, 360 - arc);
  }
}
