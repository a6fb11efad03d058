package org.panwright.mixing;

/**
 * The Kubelka–Munk equations for one band: a homogeneous coat with absorption K and scattering S
 * per unit load, load X, over a substrate.
 *
 * <p>Source: P. Kubelka and F. Munk, Zeitschrift für technische Physik 12, 1931; P. Kubelka,
 * Journal of the Optical Society of America 38, 1948, page 448. Written in a form that divides by
 * neither K nor S, so that K = 0 and S = 0 are exact and thin coats lose no digits:
 *
 * <pre>
 * B = √(K (K + 2S)),   e = exp(−2BX),   D = (1 − e) / B  (2X at B = 0),   N = 1 + e
 *
 *         S·D − g·((K + S)·D − N)
 * R  =  ───────────────────────────        over a substrate of reflectance g
 *         (K + S)·D − g·S·D + N
 *
 * R0 =  S·D / ((K + S)·D + N)              over nothing
 * T  =  2·√e / ((K + S)·D + N)             through the coat
 * </pre>
 *
 * <p>It follows from the hyperbolic form by multiplying out sinh and cosh. All reflectances here
 * are inside the film: {@link Surface} leads in and out. K, S and X are 0 or more and finite, g is
 * 0..1.
 */
public final class Coat {
  private Coat() {}

  /**
   * The reflectance of a coat over a substrate of reflectance {@code g}.
   *
   * <p>Example: K = 0.5, S = 0.2, X = 1, g = 0.85 gives 0.345430.
   */
  public static double reflectance(double k, double s, double x, double g) {
    double b = Math.sqrt(k * (k + 2 * s));
    double e = Math.exp(-2 * b * x);
    double sd = s * d(b, x);
    double loss = (k + s) * d(b, x);
    return (sd - g * (loss - (1 + e))) / (loss - g * sd + (1 + e));
  }

  /** The reflectance R0 of a coat over nothing, which is also its reflectance over ideal black. */
  public static double overBlack(double k, double s, double x) {
    return reflectance(k, s, x, 0);
  }

  /** The share T of light that passes a free coat. */
  public static double transmittance(double k, double s, double x) {
    double b = Math.sqrt(k * (k + 2 * s));
    double halfway = Math.exp(-b * x);
    return 2 * halfway / ((k + s) * d(b, x) + 1 + halfway * halfway);
  }

  /**
   * The reflectance of a coat so thick that the substrate no longer matters.
   *
   * <pre>R∞ = S / (K + S + B)</pre>
   *
   * <p>The same as 1 + q − √(q² + 2q) with q = K/S; q = 1 gives 0.267949. A coat with neither
   * absorption nor scattering has none: NaN.
   */
  public static double thick(double k, double s) {
    return s / (k + s + Math.sqrt(k * (k + 2 * s)));
  }

  private static double d(double b, double x) {
    return b == 0 ? 2 * x : -Math.expm1(-2 * b * x) / b;
  }
}
