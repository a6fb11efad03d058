package org.panwright.swatch.fit;

import org.panwright.colour.Bands;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;

/**
 * The difference of a coat's colour from the one that was read, as three numbers whose squares sum
 * to about CIEDE2000²: lightness, chroma and hue in steps that look alike around the colour read.
 *
 * <pre>
 * (ΔL / SL, ΔC / SC, ΔH / SH)
 * SL = 1 + 0.015 (L − 50)² / √(20 + (L − 50)²),  SC = 1 + 0.045 C,  SH = 1 + 0.015 C
 * </pre>
 *
 * <p>The weights of ISO/CIE 11664-6 without its finer corrections for hue, which bend too much for
 * a fit to follow.
 */
final class ColourError {
  private static final double EPSILON = 216.0 / 24389.0;
  private static final double KAPPA = 24389.0 / 27.0;
  private static final double[][] WEIGHTS = {
    Light.D65.weights(0), Light.D65.weights(1), Light.D65.weights(2)
  };
  private static final double[] WHITE = {
    Light.D65.white().x(), Light.D65.white().y(), Light.D65.white().z()
  };

  private final Lab read;
  private final double[][] metric;

  ColourError(Lab read) {
    this.read = read;
    double chroma = read.chroma();
    double along = chroma > 1e-6 ? read.a() / chroma : 1;
    double across = chroma > 1e-6 ? read.b() / chroma : 0;
    double l50 = (read.l() - 50) * (read.l() - 50);
    double sl = 1 + 0.015 * l50 / Math.sqrt(20 + l50);
    double sc = 1 + 0.045 * chroma;
    double sh = 1 + 0.015 * chroma;
    metric =
        new double[][] {
          {1 / sl, 0, 0}, {0, along / sc, across / sc}, {0, -across / sh, along / sh}
        };
  }

  /** The three numbers for a reflectance of 36 bands, and their slopes by each band. */
  Rows of(double[] reflectance) {
    double[] f = new double[3];
    double[] fSlope = new double[3];
    for (int c = 0; c < 3; c++) {
      double sum = 0;
      for (int band = 0; band < Bands.COUNT; band++) {
        sum += WEIGHTS[c][band] * reflectance[band];
      }
      double t = sum / WHITE[c];
      f[c] = Lab.f(t);
      fSlope[c] = (t > EPSILON ? f[c] / (3 * t) : KAPPA / 116) / WHITE[c];
    }
    double[] off = {
      116 * f[1] - 16 - read.l(), 500 * (f[0] - f[1]) - read.a(), 200 * (f[1] - f[2]) - read.b()
    };
    double[] errors = new double[3];
    double[][] slopes = new double[3][Bands.COUNT];
    for (int row = 0; row < 3; row++) {
      double[] m = metric[row];
      errors[row] = m[0] * off[0] + m[1] * off[1] + m[2] * off[2];
      double byX = 500 * m[1] * fSlope[0];
      double byY = (116 * m[0] - 500 * m[1] + 200 * m[2]) * fSlope[1];
      double byZ = -200 * m[2] * fSlope[2];
      for (int band = 0; band < Bands.COUNT; band++) {
        slopes[row][band] =
            byX * WEIGHTS[0][band] + byY * WEIGHTS[1][band] + byZ * WEIGHTS[2][band];
      }
    }
    return new Rows(errors, slopes);
  }

  /**
   * Three errors and their slopes.
   *
   * @param errors lightness, chroma, hue
   * @param slopes of each error by the reflectance in each band
   */
  @SuppressWarnings("ArrayRecordComponent") // lives for one pass of the hot loop
  record Rows(double[] errors, double[][] slopes) {}
}
