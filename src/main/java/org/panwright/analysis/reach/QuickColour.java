package org.panwright.analysis.reach;

import org.panwright.colour.CubeRoot;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Xyz;

/**
 * CIELAB and Oklab of D65 tristimulus values, written into an array: the formulas of {@link Lab}
 * and {@link org.panwright.colour.Oklab} for loops of millions.
 *
 * <p>Differs from those records by less than 10⁻⁹. Hue comes from a published polynomial, good to
 * 10⁻⁵ degrees.
 */
public final class QuickColour {
  private static final Xyz WHITE = Light.D65.white();
  private static final double PER_X = 1 / WHITE.x();
  private static final double PER_Y = 1 / WHITE.y();
  private static final double PER_Z = 1 / WHITE.z();
  private static final double STEPS_PER_RADIAN = Ring.STEPS / (2 * Math.PI);

  private QuickColour() {}

  /** Replaces X, Y, Z at {@code at} by the six figures of {@link Net#COLOUR}. */
  public static void convert(double[] colours, int at) {
    double x = colours[at];
    double y = colours[at + 1];
    double z = colours[at + 2];
    double fx = Lab.f(x * PER_X);
    double fy = Lab.f(y * PER_Y);
    double fz = Lab.f(z * PER_Z);
    double l = cubeRoot(0.819022437996703 * x + 0.3619062600528904 * y - 0.1288737815209879 * z);
    double m = cubeRoot(0.0329836539323885 * x + 0.9292868615863434 * y + 0.0361446663506424 * z);
    double s = cubeRoot(0.0481771893596242 * x + 0.2642395317527308 * y + 0.6335478284694309 * z);
    colours[at] = 116 * fy - 16;
    colours[at + 1] = 500 * (fx - fy);
    colours[at + 2] = 200 * (fy - fz);
    colours[at + 3] = 0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s;
    colours[at + 4] = 1.9779985324311684 * l - 2.42859224204858 * m + 0.450593709617411 * s;
    colours[at + 5] = 0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s;
  }

  private static double cubeRoot(double t) {
    if (t == 0) {
      return 0;
    }
    return t > 0 ? CubeRoot.of(t) : -CubeRoot.of(-t);
  }

  /**
   * The hue angle of (a, b) in ring steps, 0 (inclusive) to 72.
   *
   * <p>arctan x = x (1 + Σ a₂ᵢ x²ⁱ) for 0 ≤ x ≤ 1, error below 2·10⁻⁸ (Abramowitz and Stegun,
   * Handbook of Mathematical Functions, 1964, 4.4.49).
   */
  static double hueSteps(double a, double b) {
    double absA = Math.abs(a);
    double absB = Math.abs(b);
    double greater = Math.max(absA, absB);
    if (greater == 0) {
      return 0;
    }
    double x = Math.min(absA, absB) / greater;
    double q = x * x;
    double angle =
        x
            * (1
                + q
                    * (-0.3333314528
                        + q
                            * (0.1999355085
                                + q
                                    * (-0.1420889944
                                        + q
                                            * (0.1065626393
                                                + q
                                                    * (-0.0752896400
                                                        + q
                                                            * (0.0429096138
                                                                + q
                                                                    * (-0.0161657367
                                                                        + q * 0.0028662257))))))));
    angle = absB > absA ? Math.PI / 2 - angle : angle;
    angle = a < 0 ? Math.PI - angle : angle;
    double steps = (b < 0 ? -angle : angle) * STEPS_PER_RADIAN;
    double turned = steps < 0 ? steps + Ring.STEPS : steps;
    return turned >= Ring.STEPS ? 0 : turned;
  }
}
