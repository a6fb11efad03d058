package org.panwright.colour;

/**
 * A colour in Oklab (Björn Ottosson, "A perceptual color space for image processing", 2020;
 * matrices as recomputed for CSS Color 4, defined for D65).
 *
 * <p>{@code l} is 0 for black and 1 for the D65 white; {@code a} and {@code b} are roughly
 * −0.4..0.4.
 */
public record Oklab(double l, double a, double b) {
  public Oklab {
    Finite.require("Oklab", l, a, b);
  }

  /**
   * Oklab of tristimulus values seen under D65.
   *
   * <pre>
   * (l, m, s) = M1 · (X, Y, Z),   (L, a, b) = M2 · (∛l, ∛m, ∛s)
   * </pre>
   *
   * <p>Example (Ottosson's table): XYZ 0.950, 1.000, 1.089 gives L 1.000, a 0.000, b 0.000.
   */
  public static Oklab ofD65(Xyz xyz) {
    double l =
        Math.cbrt(
            0.819022437996703 * xyz.x()
                + 0.3619062600528904 * xyz.y()
                - 0.1288737815209879 * xyz.z());
    double m =
        Math.cbrt(
            0.0329836539323885 * xyz.x()
                + 0.9292868615863434 * xyz.y()
                + 0.0361446663506424 * xyz.z());
    double s =
        Math.cbrt(
            0.0481771893596242 * xyz.x()
                + 0.2642395317527308 * xyz.y()
                + 0.6335478284694309 * xyz.z());
    return new Oklab(
        0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s,
        1.9779985324311684 * l - 2.42859224204858 * m + 0.450593709617411 * s,
        0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s);
  }

  /** The tristimulus values under D65; the inverse of {@link #ofD65}. */
  public Xyz toXyzD65() {
    double l = cube(l() + 0.3963377773761749 * a + 0.2158037573099136 * b);
    double m = cube(l() - 0.1055613458156586 * a - 0.0638541728258133 * b);
    double s = cube(l() - 0.0894841775298119 * a - 1.2914855480194092 * b);
    return new Xyz(
        1.2268798758459243 * l - 0.5578149944602171 * m + 0.2813910456659647 * s,
        -0.0405757452148008 * l + 1.112286803280317 * m - 0.0717110580655164 * s,
        -0.0763729366746601 * l - 0.4214933324022432 * m + 1.5869240198367816 * s);
  }

  private static double cube(double value) {
    return value * value * value;
  }

  /** The same colour by lightness, chroma and hue. */
  public Oklch toOklch() {
    return new Oklch(l, Math.hypot(a, b), Hue.degrees(b, a));
  }
}
