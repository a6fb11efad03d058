package org.panwright.colour;

/**
 * A colour in CIELAB 1976 (CIE 015, ISO/CIE 11664-4).
 *
 * <p>{@code l} is lightness L*, 0 for black and 100 for the white it was computed against; {@code
 * a} and {@code b} are the red–green and yellow–blue coordinates, roughly −130..130 for paints. The
 * white is not stored: whoever holds a Lab says under which light it holds. CIELAB hue bends in the
 * blues; for hue use {@link Oklch}.
 */
public record Lab(double l, double a, double b) {
  /** ε of CIE 015: the value of t where f(t) turns linear, (6/29)³. */
  private static final double EPSILON = 216.0 / 24389.0;

  /** κ of CIE 015: (29/3)³. */
  private static final double KAPPA = 24389.0 / 27.0;

  public Lab {
    Finite.require("Lab", l, a, b);
  }

  /**
   * CIELAB of {@code xyz} against {@code white}.
   *
   * <pre>
   * L* = 116 f(Y/Yn) − 16,  a* = 500 (f(X/Xn) − f(Y/Yn)),  b* = 200 (f(Y/Yn) − f(Z/Zn))
   * f(t) = ∛t  for t > ε,  (κ t + 16) / 116  below
   * </pre>
   *
   * <p>Example: a grey with Y = 0.18418652 of its white has L* = 50.
   */
  public static Lab of(Xyz xyz, Xyz white) {
    double fx = f(xyz.x() / white.x());
    double fy = f(xyz.y() / white.y());
    double fz = f(xyz.z() / white.z());
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  /** f(t) of the formula above, shared with the batch mixer. */
  public static double f(double t) {
    return t > EPSILON ? CubeRoot.of(t) : (KAPPA * t + 16) / 116;
  }

  /** The tristimulus values this colour stands for against {@code white}. */
  public Xyz toXyz(Xyz white) {
    double fy = (l + 16) / 116;
    double fx = fy + a / 500;
    double fz = fy - b / 200;
    return new Xyz(white.x() * inverse(fx), white.y() * inverse(fy), white.z() * inverse(fz));
  }

  private static double inverse(double f) {
    double cubed = f * f * f;
    return cubed > EPSILON ? cubed : (116 * f - 16) / KAPPA;
  }

  /** Chroma C*ab, the distance from the grey axis. */
  public double chroma() {
    return Math.hypot(a, b);
  }

  /** CIELAB hue angle in degrees, 0 (inclusive) to 360; 0 for a neutral. */
  public double hueDeg() {
    return Hue.degrees(b, a);
  }
}
