package org.panwright.mixing;

import org.panwright.colour.Bands;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Xyz;

/**
 * The same mixes as {@link Mixer}, millions a second: one mix at a time in its own scratch arrays,
 * colour only, no allocation per mix.
 *
 * <p>Use: {@link #clear}, {@link #add} each paint with its load, then {@link #writeLab} or {@link
 * #writeXyz} as often as wanted with different dilutions. One instance belongs to one thread.
 *
 * <p>The exponential of {@link Coat} is taken in a form made of products only, which the JVM turns
 * into vector instructions and in which neither B → 0 nor a thin coat loses digits. With h = 2BX /
 * 1024,
 *
 * <pre>
 * c₀ = (1 − e^−h) / B      by the series of 1 − e^−h, six terms
 * cᵢ₊₁ = cᵢ (2 − cᵢ B)     since 1 − e^−2u = (1 − e^−u)(2 − (1 − e^−u))
 * D = c₁₀,  e = 1 − c₁₀ B
 * </pre>
 *
 * <p>h is capped at 40/1024: beyond, e is below 5·10⁻¹⁸ and no coat can tell. Measured against
 * {@link Coat} the reflectances differ by less than 10⁻¹².
 */
public final class BatchMixer {
  private static final int STRIDE = OpticsTable.STRIDE;
  private static final int DOUBLINGS = 10;
  private static final double STEP = 2.0 / (1 << DOUBLINGS);
  private static final double STEP_CAP = 40.0 / (1 << DOUBLINGS);

  private final double[] tableAbsorption;
  private final double[] tableScattering;
  private final double[] ground;
  private final double seen;
  private final double passed;
  private final double inner;
  private final double[] weightX = new double[STRIDE];
  private final double[] weightY = new double[STRIDE];
  private final double[] weightZ = new double[STRIDE];
  private final Xyz white;

  private final double[] k = new double[STRIDE];
  private final double[] s = new double[STRIDE];
  private final double[] b = new double[STRIDE];
  private final double[] d = new double[STRIDE];
  private final double[] reflectance = new double[STRIDE];
  private double x;
  private double y;
  private double z;

  /** A mixer for the paints of {@code table}, seen through {@code surface} under {@code light}. */
  public BatchMixer(OpticsTable table, Surface surface, Light light) {
    tableAbsorption = table.absorption();
    tableScattering = table.scattering();
    ground = table.ground();
    seen = surface.seen();
    passed = surface.passed();
    inner = surface.inner();
    System.arraycopy(light.weights(0), 0, weightX, 0, Bands.COUNT);
    System.arraycopy(light.weights(1), 0, weightY, 0, Bands.COUNT);
    System.arraycopy(light.weights(2), 0, weightZ, 0, Bands.COUNT);
    white = light.white();
  }

  /** Starts a new mix with no paint in it. */
  public void clear() {
    java.util.Arrays.fill(k, 0);
    java.util.Arrays.fill(s, 0);
  }

  /** Adds a paint, by its number in the table, at a load of 0 or more. */
  public void add(int paint, double load) {
    int row = paint * STRIDE;
    for (int i = 0; i < STRIDE; i++) {
      k[i] += load * tableAbsorption[row + i];
      s[i] += load * tableScattering[row + i];
    }
  }

  /**
   * Writes L*, a*, b* of the mix, thinned or thickened by {@code factor}, to {@code out[at..at+2]}.
   */
  public void writeLab(double factor, double[] out, int at) {
    coat(factor);
    double fx = Lab.f(x / white.x());
    double fy = Lab.f(y / white.y());
    double fz = Lab.f(z / white.z());
    out[at] = 116 * fy - 16;
    out[at + 1] = 500 * (fx - fy);
    out[at + 2] = 200 * (fy - fz);
  }

  /**
   * Writes X, Y, Z of the mix, thinned or thickened by {@code factor}, to {@code out[at..at+2]}.
   */
  public void writeXyz(double factor, double[] out, int at) {
    coat(factor);
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }

  private void coat(double factor) {
    startExponential(factor);
    doubleUp();
    overPaper();
    weigh();
  }

  private void startExponential(double factor) {
    double step = STEP * factor;
    for (int i = 0; i < STRIDE; i++) {
      double root = Math.sqrt(k[i] * (k[i] + 2 * s[i]));
      double capped = Math.min(step, STEP_CAP / root);
      double h = root * capped;
      b[i] = root;
      d[i] =
          capped * (1 - h * (1 / 2.0 - h * (1 / 6.0 - h * (1 / 24.0 - h * (1 / 120.0 - h / 720)))));
    }
  }

  private void doubleUp() {
    for (int i = 0; i < STRIDE; i++) {
      double root = b[i];
      double c = d[i];
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      c *= 2 - c * root;
      d[i] = c;
    }
  }

  private void overPaper() {
    for (int i = 0; i < STRIDE; i++) {
      double g = ground[i];
      double sd = s[i] * d[i];
      double loss = k[i] * d[i] + sd;
      double n = 2 - d[i] * b[i];
      double up = sd - g * (loss - n);
      double down = loss - g * sd + n;
      reflectance[i] = seen + passed * up / (down - inner * up);
    }
  }

  private void weigh() {
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int i = 0; i < Bands.COUNT; i++) {
      double r = reflectance[i];
      sumX += weightX[i] * r;
      sumY += weightY[i] * r;
      sumZ += weightZ[i] * r;
    }
    x = sumX;
    y = sumY;
    z = sumZ;
  }
}
