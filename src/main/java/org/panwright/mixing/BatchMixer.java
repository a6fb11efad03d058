package org.panwright.mixing;

import java.util.Arrays;
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
 * <p>Tristimulus values differ from those of {@link Mixer} by less than 10⁻¹².
 */
public final class BatchMixer {
  private static final int BANDS = Bands.COUNT;

  private final double[] tableAbsorption;
  private final double[] tableScattering;
  private final double[] tableGloss;
  private final double[] ground;
  private final double[] weightX;
  private final double[] weightY;
  private final double[] weightZ;
  private final Xyz white;

  private final CoatRow coat;
  private final double[] reflectance = new double[BANDS];
  private boolean stirred;
  private double x;
  private double y;
  private double z;

  /** A mixer for the paints of {@code table}, seen dry under {@code light}. */
  public BatchMixer(OpticsTable table, Light light) {
    tableAbsorption = table.absorption();
    tableScattering = table.scattering();
    tableGloss = table.gloss();
    ground = table.ground();
    weightX = light.weights(0);
    weightY = light.weights(1);
    weightZ = light.weights(2);
    white = light.white();
    coat = new CoatRow(Surface.DRY);
  }

  /** Starts a new mix with no paint in it. */
  public void clear() {
    Arrays.fill(coat.k, 0);
    Arrays.fill(coat.s, 0);
    coat.gloss = 0;
    stirred = false;
  }

  /** Adds a paint, by its number in the table, at a load of 0 or more. */
  public void add(int paint, double load) {
    int row = paint * BANDS;
    double[] k = coat.k;
    double[] s = coat.s;
    for (int i = 0; i < BANDS; i++) {
      k[i] += load * tableAbsorption[row + i];
    }
    for (int i = 0; i < BANDS; i++) {
      s[i] += load * tableScattering[row + i];
    }
    coat.gloss += load * tableGloss[paint];
    stirred = false;
  }

  /**
   * Writes L*, a*, b* of the mix, thinned or thickened by {@code factor}, to {@code out[at..at+2]}.
   */
  public void writeLab(double factor, double[] out, int at) {
    paint(factor);
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
    paint(factor);
    out[at] = x;
    out[at + 1] = y;
    out[at + 2] = z;
  }

  private void paint(double factor) {
    if (!stirred) {
      coat.changed();
      stirred = true;
    }
    coat.over(ground, factor, reflectance);
    weigh();
  }

  private void weigh() {
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int i = 0; i < BANDS; i++) {
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
