package org.panwright.mixing;

import java.math.BigDecimal;
import java.math.MathContext;

/** The Kubelka–Munk coat counted with 60 digits, so that no rounding of ours hides in it. */
final class ExactCoat {
  private static final MathContext DIGITS = new MathContext(60);
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  private ExactCoat() {}

  /**
   * The reflectance over {@code g} by the hyperbolic form of Kubelka 1948 with sinh and cosh
   * written as exponentials of +BX, whose series has no minus sign and so loses nothing.
   */
  static double reflectance(double k, double s, double x, double g) {
    BigDecimal absorbs = new BigDecimal(k);
    BigDecimal scatters = new BigDecimal(s);
    BigDecimal load = new BigDecimal(x);
    BigDecimal below = new BigDecimal(g);
    BigDecimal sum = absorbs.add(scatters);
    BigDecimal square = absorbs.multiply(absorbs.add(scatters.multiply(TWO)));
    BigDecimal d = load.multiply(TWO);
    BigDecimal n = TWO;
    if (square.signum() > 0) {
      BigDecimal b = square.sqrt(DIGITS);
      BigDecimal grown = expMinusOne(b.multiply(load).multiply(TWO));
      d = grown.divide(b, DIGITS);
      n = grown.add(TWO);
    }
    BigDecimal up = scatters.multiply(d).subtract(below.multiply(sum.multiply(d).subtract(n)));
    BigDecimal down = sum.multiply(d).subtract(below.multiply(scatters).multiply(d)).add(n);
    return up.divide(down, DIGITS).doubleValue();
  }

  /** e^u − 1 = u + u²/2! + u³/3! + … for u of 0 or more. */
  private static BigDecimal expMinusOne(BigDecimal u) {
    BigDecimal term = u.round(DIGITS);
    BigDecimal sum = term;
    for (int i = 2; term.compareTo(sum.scaleByPowerOfTen(-60)) > 0; i++) {
      term = term.multiply(u, DIGITS).divide(BigDecimal.valueOf(i), DIGITS);
      sum = sum.add(term, DIGITS);
    }
    return sum;
  }
}
