package org.panwright.swatch.squares;

import java.util.Optional;

/**
 * The normal equations of a least squares problem, gathered residual by residual: A = Σ w jᵀj and g
 * = Σ w r jᵀ, where j is the slope of a residual r.
 *
 * <p>Most residuals of a fit move with a few of its many unknowns, so each brings only the slopes
 * that are not 0. The lower half of A is kept.
 */
public final class Equations {
  private static final int BLOCK = 4;

  private final int size;
  private final double[][] matrix;
  private final double[] gradient;

  /** None gathered yet, of {@code size} unknowns. */
  public Equations(int size) {
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
  public void add(int[] unknowns, double[] slopes, double residual, double weight) {
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
  public void addToDiagonal(int unknown, double value) {
    matrix[unknown][unknown] += value;
  }

  /**
   * The step that lowers the sum of squares most, damped after Levenberg and Marquardt:
   *
   * <pre>(A + λ diag A) step = −g</pre>
   *
   * <p>By Cholesky's factors; empty if the damped matrix is not positive definite.
   */
  public Optional<double[]> step(double damping) {
    return factors(damping).map(this::solve);
  }

  /**
   * Cholesky's upper factor U of A + λ diag A = Uᵀ U, row by row, each row from its diagonal on;
   * empty if that is not positive definite.
   *
   * <p>Nearly all time of a fit goes by here. Rows are taken {@value #BLOCK} at a time, so that
   * each number of the rest is fetched once for as many rows, and no sum waits for the one before.
   */
  private Optional<double[][]> factors(double damping) {
    double[][] upper = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column <= row; column++) {
        upper[column][row] = matrix[row][column];
      }
      upper[row][row] += damping * (matrix[row][row] + 1e-9);
    }
    for (int from = 0; from < size; from += BLOCK) {
      int to = Math.min(from + BLOCK, size);
      for (int row = from; row < to; row++) {
        for (int done = from; done < row; done++) {
          subtract(upper[row], row, upper[done][row], upper[done]);
        }
        double square = upper[row][row];
        if (!(square > 0)) {
          return Optional.empty();
        }
        divide(upper[row], row, Math.sqrt(square));
      }
      for (int row = to; row < size; row++) {
        subtractBlock(upper, from, row);
      }
    }
    return Optional.of(upper);
  }

  private static void subtract(double[] from, int start, double times, double[] row) {
    for (int k = start; k < from.length; k++) {
      from[k] -= times * row[k];
    }
  }

  private static void divide(double[] row, int start, double by) {
    for (int k = start; k < row.length; k++) {
      row[k] /= by;
    }
  }

  /** Takes {@value #BLOCK} finished rows out of a later one. */
  private static void subtractBlock(double[][] upper, int from, int row) {
    double[] current = upper[row];
    double[] a = upper[from];
    double[] b = upper[from + 1];
    double[] c = upper[from + 2];
    double[] d = upper[from + 3];
    double ta = a[row];
    double tb = b[row];
    double tc = c[row];
    double td = d[row];
    for (int k = row; k < current.length; k++) {
      current[k] -= ta * a[k] + tb * b[k] + tc * c[k] + td * d[k];
    }
  }

  /** How uncertain the unknowns leave each of some linear forms of them. */
  public Optional<Uncertainty> uncertainty() {
    return factors(0).map(upper -> (unknowns, slopes) -> variance(upper, unknowns, slopes));
  }

  /**
   * The variance jᵀ A⁻¹ j of a form with slopes j: what a least squares fit of unit noise leaves.
   */
  public interface Uncertainty {
    /** The variance of the form with these slopes by these unknowns. */
    double variance(int[] unknowns, double[] slopes);
  }

  private double variance(double[][] upper, int[] unknowns, double[] slopes) {
    double[] y = new double[size];
    for (int i = 0; i < unknowns.length; i++) {
      y[unknowns[i]] += slopes[i];
    }
    forward(upper, y);
    double sum = 0;
    for (double element : y) {
      sum += element * element;
    }
    return sum;
  }

  private double[] solve(double[][] upper) {
    double[] x = new double[size];
    for (int row = 0; row < size; row++) {
      x[row] = -gradient[row];
    }
    forward(upper, x);
    for (int row = size - 1; row >= 0; row--) {
      double sum = x[row];
      for (int k = row + 1; k < size; k++) {
        sum -= upper[row][k] * x[k];
      }
      x[row] = sum / upper[row][row];
    }
    return x;
  }

  /** Makes of b the y with Uᵀ y = b. */
  private static void forward(double[][] upper, double[] y) {
    for (int row = 0; row < y.length; row++) {
      y[row] /= upper[row][row];
      subtract(y, row + 1, y[row], upper[row]);
    }
  }
}
