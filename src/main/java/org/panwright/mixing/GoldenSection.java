package org.panwright.mixing;

import java.util.function.DoubleUnaryOperator;

/** Search for the least value of a function with one valley (Kiefer, 1953). */
public final class GoldenSection {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  private GoldenSection() {}

  /** Where {@code f} is least between two places, to within {@code tolerance}. */
  public static double least(double from, double to, double tolerance, DoubleUnaryOperator f) {
    double low = from;
    double high = to;
    double lower = high - GOLDEN * (high - low);
    double upper = low + GOLDEN * (high - low);
    double atLower = f.applyAsDouble(lower);
    double atUpper = f.applyAsDouble(upper);
    while (high - low > tolerance) {
      if (atLower < atUpper) {
        high = upper;
        upper = lower;
        atUpper = atLower;
        lower = high - GOLDEN * (high - low);
        atLower = f.applyAsDouble(lower);
      } else {
        low = lower;
        lower = upper;
        atLower = atUpper;
        upper = low + GOLDEN * (high - low);
        atUpper = f.applyAsDouble(upper);
      }
    }
    return (low + high) / 2;
  }
}
