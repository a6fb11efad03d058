package org.panwright.swatch.sheet;

/** Weighted linear least squares of a few unknowns, by the normal equations and Cholesky. */
final class WeightedSquares {
  private static final double RIDGE = 1e-9;

  private WeightedSquares() {}

  /**
   * The coefficients c that minimise Σ wᵢ (rowᵢ · c − valueᵢ)².
   *
   * @param rows as long as there are unknowns
   * @param weights 0 or more, one above 0 at least
   */
  static double[] solve(double[][] rows, double[] values, double[] weights) {
    int n = rows[0].length;
    double[][] a = new double[n][n];
    double[] b = new double[n];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < n; j++) {
        b[j] += weights[i] * rows[i][j] * values[i];
        for (int k = 0; k <= j; k++) {
          a[j][k] += weights[i] * rows[i][j] * rows[i][k];
        }
      }
    }
    for (int j = 0; j < n; j++) {
      a[j][j] += RIDGE * (1 + a[j][j]);
      for (int k = 0; k <= j; k++) {
        double sum = a[j][k];
        for (int m = 0; m < k; m++) {
          sum -= a[j][m] * a[k][m];
        }
        a[j][k] = j == k ? Math.sqrt(Math.max(1e-30, sum)) : sum / a[k][k];
      }
    }
    for (int j = 0; j < n; j++) {
      for (int k = 0; k < j; k++) {
        b[j] -= a[j][k] * b[k];
      }
      b[j] /= a[j][j];
    }
    for (int j = n - 1; j >= 0; j--) {
      b[j] /= a[j][j];
      for (int k = 0; k < j; k++) {
        b[k] -= a[j][k] * b[j];
      }
    }
    return b;
  }
}
