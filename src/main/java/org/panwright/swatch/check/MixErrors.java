package org.panwright.swatch.check;

import java.util.Arrays;
import java.util.List;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;

/**
 * How far predicted colours lie from those read, over some mixes under D65.
 *
 * @param n how many mixes
 * @param median of CIEDE2000
 * @param p90 nine tenths of the mixes are nearer than this CIEDE2000
 * @param max the largest CIEDE2000
 * @param shareUnder5 the share of mixes, 0..1, whose ΔE*ab is below 5
 */
public record MixErrors(int n, double median, double p90, double max, double shareUnder5) {
  /**
   * The errors of predictions against readings, in pairs.
   *
   * @throws IllegalArgumentException if the lists are empty or differ in length
   */
  public static MixErrors of(List<Lab> predicted, List<Lab> read) {
    int n = read.size();
    if (n == 0 || predicted.size() != n) {
      throw new IllegalArgumentException(
          "pairs of colours are needed, were " + predicted.size() + " and " + n);
    }
    double[] errors = new double[n];
    int near = 0;
    for (int i = 0; i < n; i++) {
      errors[i] = Difference.ciede2000(predicted.get(i), read.get(i));
      if (Difference.ab(predicted.get(i), read.get(i)) < 5) {
        near++;
      }
    }
    Arrays.sort(errors);
    return new MixErrors(
        n, quantile(errors, 0.5), quantile(errors, 0.9), errors[n - 1], (double) near / n);
  }

  /** The quantile by straight lines between the sorted values, the first being 0, the last 1. */
  private static double quantile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
