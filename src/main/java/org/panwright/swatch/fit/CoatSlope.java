package org.panwright.swatch.fit;

/**
 * The inner reflectance of a coat over a substrate in one band, and how it moves with K·X, S·X and
 * the substrate g: the equation of {@link org.panwright.mixing.Coat}, differentiated.
 *
 * <pre>
 * B = √(K (K + 2S)),  e = exp(−2B),  D = (1 − e)/B,  N = 1 + e
 * u = S D − g ((K + S) D − N),   v = (K + S) D − g S D + N,   R = u / v
 * ∂B/∂K = (K + S)/B,  ∂B/∂S = K/B,  ∂N/∂B = −2e,  ∂D/∂B = (2e − D)/B
 * ∂R = (∂u − R ∂v) / v
 * </pre>
 *
 * @param reflectance R
 * @param byAbsorption ∂R/∂(KX)
 * @param byScattering ∂R/∂(SX)
 * @param byGround ∂R/∂g
 */
record CoatSlope(double reflectance, double byAbsorption, double byScattering, double byGround) {

  /** Below this B the differences lose digits; no fitted coat of paint comes near it. */
  private static final double THINNEST = 1e-4;

  /** The slopes at K·X = {@code k} and S·X = {@code s}, both above 0, over {@code g} 0..1. */
  static CoatSlope at(double k, double s, double g) {
    double b = Math.max(THINNEST, Math.sqrt(k * (k + 2 * s)));
    double e = Math.exp(-2 * b);
    double d = -Math.expm1(-2 * b) / b;
    double n = 1 + e;
    double u = s * d - g * ((k + s) * d - n);
    double v = (k + s) * d - g * s * d + n;
    double r = u / v;

    double dByB = (2 * e - d) / b;
    double nByB = -2 * e;
    double uByB = (s - g * (k + s)) * dByB + g * nByB;
    double vByB = (k + s - g * s) * dByB + nByB;
    double bByK = (k + s) / b;
    double bByS = k / b;
    double uByK = -g * d + uByB * bByK;
    double vByK = d + vByB * bByK;
    double uByS = d - g * d + uByB * bByS;
    double vByS = d - g * d + vByB * bByS;
    return new CoatSlope(
        r, (uByK - r * vByK) / v, (uByS - r * vByS) / v, (n - (k + s) * d + r * s * d) / v);
  }
}
