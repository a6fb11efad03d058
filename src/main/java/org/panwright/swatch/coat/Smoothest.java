package org.panwright.swatch.coat;

import java.util.Arrays;
import org.panwright.colour.Bands;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Xyz;
import org.panwright.swatch.squares.Equations;

/**
 * The reflectance of a colour that bends least: one of the many spectra that look alike under D65,
 * and the one nearest to what paints do.
 *
 * <pre>
 * R = (1 + tanh z) / 2,   minimise  q Σ (zᵢ₊₁ − zᵢ)² + |300 (XYZ(R) − XYZ)|²
 * </pre>
 *
 * <p>By damped Gauss–Newton steps. R stays between 0 and 1. After the hyperbolic tangent method of
 * S. A. Burns, Color Research and Application 45, 2020, with the colour held by a stiff penalty
 * instead of exactly, so that a colour no surface can have is answered by a near one.
 */
final class Smoothest {
  private static final int N = Bands.COUNT;
  private static final double BEND = 0.01;
  private static final double HOLD = 300;
  private static final int STEPS = 80;
  private static final double LONGEST_STEP = 0.5;
  private static final double SETTLED = 1e-6;

  private Smoothest() {}

  /** The smoothest reflectance that has the colour {@code lab} under D65. */
  static Spectrum reflectance(Lab lab) {
    Xyz aim = lab.toXyz(Light.D65.white());
    double[] target = {aim.x(), aim.y(), aim.z()};
    double[][] weights = {Light.D65.weights(0), Light.D65.weights(1), Light.D65.weights(2)};
    double[] z = new double[N];
    Arrays.fill(z, atanh(Math.min(0.98, Math.max(-0.98, 2 * aim.y() - 1))));
    for (int step = 0; step < STEPS; step++) {
      if (improve(z, target, weights) < SETTLED) {
        break;
      }
    }
    return Spectrum.ofBands(band -> (1 + Math.tanh(z[band])) / 2);
  }

  private static double improve(double[] z, double[] target, double[][] weights) {
    Equations equations = new Equations(N);
    for (int i = 0; i < N; i++) {
      equations.addToDiagonal(i, 1e-8);
    }
    for (int i = 0; i + 1 < N; i++) {
      equations.add(new int[] {i, i + 1}, new double[] {-1, 1}, z[i + 1] - z[i], BEND);
    }
    int[] all = new int[N];
    Arrays.setAll(all, i -> i);
    for (int c = 0; c < 3; c++) {
      double off = -target[c];
      double[] slope = new double[N];
      for (int i = 0; i < N; i++) {
        double t = Math.tanh(z[i]);
        off += weights[c][i] * (1 + t) / 2;
        slope[i] = HOLD * weights[c][i] * (1 - t * t) / 2;
      }
      equations.add(all, slope, HOLD * off, 1);
    }
    double[] step = equations.step(0).orElseThrow();
    double longest = 0;
    for (int i = 0; i < N; i++) {
      z[i] += Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step[i]));
      longest = Math.max(longest, Math.abs(step[i]));
    }
    return longest;
  }

  private static double atanh(double t) {
    return 0.5 * Math.log((1 + t) / (1 - t));
  }
}
