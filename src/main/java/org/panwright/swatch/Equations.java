package org.panwright.swatch;

import java.util.Optional;

/**
 * The normal equations of a least squares problem, gathered residual by residual: A = Σ w jᵀj and g
 * = Σ w r jᵀ, where j is the slope of a residual r.
 *
 * <p>Most residuals of a fit move with a few of its many unknowns, so each brings only the slopes
 * that are not 0. The lower half of A is kept.
 */
final class Equations {
  private final int size;
  private final double[][] matrix;
  private final double[] gradient;

  Equations(int size) {
    this.size = size;
    matrix = new double[size][];
    for (int row = 0; row < size; row++) {
      matrix[row] = new double[row + 1];
    }
    gradient = new double[size];
  }

  /**
   * Adds one residual.
   *
   * @param unknowns the numbers of the unknowns it moves with, each once
   * @param slopes its slopes by those unknowns
   * @param residual its value
   * @param weight of its square, 0 or more
   */
  void add(int[] unknowns, double[] slopes, double residual, double weight) {
    for (int i = 0; i < unknowns.length; i++) {
      double scaled = weight * slopes[i];
      int row = unknowns[i];
      gradient[row] += scaled * residual;
      for (int j = 0; j < unknowns.length; j++) {
        int column = unknowns[j];
        if (column <= row) {
          matrix[row][column] += scaled * slopes[j];
        }
      }
    }
  }

  /** Adds to one element of the diagonal. */
  void addToDiagonal(int unknown, double value) {
    matrix[unknown][unknown] += value;
  }

  /**
   * The step that lowers the sum of squares most, damped after Levenberg and Marquardt:
   *
   * <pre>(A + λ diag A) step = −g</pre>
   *
   * <p>By Cholesky's factors; empty if the damped matrix is not positive definite.
   */
  Optional<double[]> step(double damping) {
    return factors(damping).map(this::solve);
  }

  /** Cholesky's lower factor of A + λ diag A; empty if that is not positive definite. */
  private Optional<double[][]> factors(double damping) {
    double[][] lower = new double[size][];
    for (int row = 0; row < size; row++) {
      lower[row] = matrix[row].clone();
      lower[row][row] += damping * (matrix[row][row] + 1e-9);
    }
    for (int row = 0; row < size; row++) {
      double[] current = lower[row];
      for (int column = 0; column <= row; column++) {
        double[] other = lower[column];
        double sum = current[column];
        for (int k = 0; k < column; k++) {
          sum -= current[k] * other[k];
        }
        if (column < row) {
          current[column] = sum / other[column];
        } else if (sum > 0) {
          current[row] = Math.sqrt(sum);
        } else {
          return Optional.empty();
        }
      }
    }
    return Optional.of(lower);
  }

  /** How uncertain the unknowns leave each of some linear forms of them. */
  Optional<Uncertainty> uncertainty() {
    return factors(0).map(lower -> (unknowns, slopes) -> variance(lower, unknowns, slopes));
  }

  /**
   * The variance jᵀ A⁻¹ j of a form with slopes j: what a least squares fit of unit noise leaves.
   */
  interface Uncertainty {
    /** The variance of the form with these slopes by these unknowns. */
    double variance(int[] unknowns, double[] slopes);
  }

  private double variance(double[][] lower, int[] unknowns, double[] slopes) {
    double[] y = new double[size];
    for (int i = 0; i < unknowns.length; i++) {
      y[unknowns[i]] += slopes[i];
    }
    double sum = 0;
    for (int row = 0; row < size; row++) {
      double[] current = lower[row];
      double left = y[row];
      for (int k = 0; k < row; k++) {
        left -= current[k] * y[k];
      }
      y[row] = left / current[row];
      sum += y[row] * y[row];
    }
    return sum;
  }

  private double[] solve(double[][] lower) {
    double[] x = new double[size];
    for (int row = 0; row < size; row++) {
      double sum = -gradient[row];
      for (int k = 0; k < row; k++) {
        sum -= lower[row][k] * x[k];
      }
      x[row] = sum / lower[row][row];
    }
    for (int row = size - 1; row >= 0; row--) {
      x[row] /= lower[row][row];
      for (int k = 0; k < row; k++) {
        x[k] -= lower[row][k] * x[row];
      }
    }
    return x;
  }
}
