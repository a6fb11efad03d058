package org.panwright.mixing;

import org.panwright.colour.Bands;

/**
 * The equation of {@link Coat} for all bands at once, in a form made for speed: no exponential, one
 * square root a band and mix, one division a band and coat, and loops the JVM turns into vector
 * instructions.
 *
 * <p>The exponential is taken by doubling. With h = 2BX / 256,
 *
 * <pre>
 * y₀ = 1 − e^−h         by its series, six terms
 * yᵢ₊₁ = yᵢ (2 − yᵢ)    since 1 − e^−2u = (1 − e^−u)(2 − (1 − e^−u))
 * y = y₈ = 1 − e^−2BX
 * </pre>
 *
 * <p>and the fraction of {@link Coat} is multiplied out by B, with D = y / B and N = 2 − y:
 *
 * <pre>
 *        S·y − g·((K + S)·y − B·(2 − y))
 * R  =  ─────────────────────────────────
 *        (K + S)·y − g·S·y + B·(2 − y)
 * </pre>
 *
 * <p>Every step keeps the relative precision of a small y, so that thin coats and B → 0 lose no
 * digits. At B = 0 both lines vanish; B is therefore kept above 10⁻¹⁵⁰, where y is 2BX to the last
 * digit and B cancels. h is capped at 40/256: beyond, e is below 5·10⁻¹⁸ and no coat can tell.
 *
 * <p>One instance belongs to one thread.
 */
final class CoatRow {
  private static final int BANDS = Bands.COUNT;
  private static final double STEP = 2.0 / 256;
  private static final double STEP_CAP = 40.0 / 256;
  private static final double LEAST_SQUARE = 1e-300;

  /** K·X of the mix, by band; written by the holder before {@link #changed}. */
  final double[] k = new double[BANDS];

  /** S·X of the mix, by band; written by the holder before {@link #changed}. */
  final double[] s = new double[BANDS];

  /** The gloss of the mix; written by the holder. */
  double gloss;

  private final Surface surface;
  private final double[] b = new double[BANDS];
  private final double[] y = new double[BANDS];

  /** Coats seen from outside through {@code surface}, smoothed by their gloss. */
  CoatRow(Surface surface) {
    this.surface = surface;
  }

  /** Takes note of new values in {@link #k} and {@link #s}. */
  void changed() {
    for (int i = 0; i < BANDS; i++) {
      b[i] = Math.sqrt(k[i] * (k[i] + 2 * s[i]) + LEAST_SQUARE);
    }
  }

  /**
   * Writes the reflectances seen of the mix, thinned or thickened by {@code factor}, over a
   * substrate of the given reflectances inside.
   */
  void over(double[] ground, double factor, double[] reflectance) {
    startSeries(factor);
    doubleUp();
    layOver(ground, factor, reflectance);
  }

  private void startSeries(double factor) {
    double step = STEP * factor;
    for (int i = 0; i < BANDS; i++) {
      double h = Math.min(b[i] * step, STEP_CAP);
      y[i] = h * (1 - h * (1 / 2.0 - h * (1 / 6.0 - h * (1 / 24.0 - h * (1 / 120.0 - h / 720)))));
    }
  }

  private void doubleUp() {
    for (int i = 0; i < BANDS; i++) {
      double doubled = y[i];
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      doubled *= 2 - doubled;
      y[i] = doubled;
    }
  }

  private void layOver(double[] ground, double factor, double[] reflectance) {
    double left = gloss == 0 ? 1 : Math.exp(-gloss * factor);
    double seen = surface.seen() * left;
    double inner = surface.inner();
    double passed = (1 - surface.lost() * left) * (1 - inner);
    for (int i = 0; i < BANDS; i++) {
      double g = ground[i];
      double sy = s[i] * y[i];
      double loss = k[i] * y[i] + sy;
      double n = b[i] * (2 - y[i]);
      double up = sy - g * (loss - n);
      double down = loss - g * sy + n;
      reflectance[i] = seen + passed * up / (down - inner * up);
    }
  }
}
