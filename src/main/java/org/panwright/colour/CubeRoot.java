package org.panwright.colour;

/**
 * Cube roots of positive numbers in less than half the time of {@link Math#cbrt}, which every
 * CIELAB colour of the hot loops takes three times.
 *
 * <p>A first guess divides the exponent by three (W. Kahan's device, right to 3.3 %); two steps of
 * Halley's method, each of which cubes the error, bring it below 10⁻¹⁴ of the root:
 *
 * <pre>r ← r (r³ + 2t) / (2r³ + t)</pre>
 */
public final class CubeRoot {
  /** Two thirds of the exponent's bias, corrected so that the guess errs equally both ways. */
  private static final long BIAS = 0x2A9F7893782DA1CEL;

  private CubeRoot() {}

  /** The cube root of a normal, positive {@code t}; anything else gives no meaningful number. */
  public static double of(double t) {
    double guess = Double.longBitsToDouble(Double.doubleToRawLongBits(t) / 3 + BIAS);
    return nearer(nearer(guess, t), t);
  }

  private static double nearer(double root, double t) {
    double cube = root * root * root;
    return root * (cube + 2 * t) / (2 * cube + t);
  }
}
