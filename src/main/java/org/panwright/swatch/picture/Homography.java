package org.panwright.swatch.picture;

import java.util.List;
import java.util.Optional;

/**
 * How a flat sheet lies in a picture: the perspective map of one plane onto another.
 *
 * <pre>
 * x' = (a x + b y + c) / (g x + h y + 1),   y' = (d x + e y + f) / (g x + h y + 1)
 * </pre>
 *
 * <p>Four pairs of places fix the eight numbers (R. Hartley and A. Zisserman, Multiple View
 * Geometry in Computer Vision, 2nd edition, 2004, section 2.3).
 */
public final class Homography {
  private static final int UNKNOWNS = 8;
  private static final double SINGULAR = 1e-12;
  private static final double LEAST_TURN = 0.02;

  private final double[] h;

  private Homography(double[] h) {
    this.h = h;
  }

  /**
   * The map that takes each of four places to its partner; empty if the places or their partners do
   * not go round a sheet: three nearly in one line, two in one place, sides that cross, a dent.
   *
   * @param from four places, clockwise as seen
   * @param to their partners, in the same order
   */
  public static Optional<Homography> of(List<Point> from, List<Point> to) {
    if (from.size() != 4 || to.size() != 4) {
      throw new IllegalArgumentException(
          "four pairs fix a perspective, were %d and %d".formatted(from.size(), to.size()));
    }
    if (!isRoundabout(from, LEAST_TURN) || !isRoundabout(to, LEAST_TURN)) {
      return Optional.empty();
    }
    double[][] rows = new double[UNKNOWNS][];
    for (int i = 0; i < 4; i++) {
      double x = from.get(i).x();
      double y = from.get(i).y();
      double u = to.get(i).x();
      double v = to.get(i).y();
      rows[2 * i] = new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y, u};
      rows[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -v * x, -v * y, v};
    }
    return solve(rows).map(Homography::new);
  }

  /**
   * Whether four places go round clockwise as seen (y grows downwards), turning at each.
   *
   * @param leastTurn the sine of the least turn
   */
  public static boolean isRoundabout(List<Point> round, double leastTurn) {
    for (int i = 0; i < 4; i++) {
      Point p = round.get(i);
      Point q = round.get((i + 1) % 4);
      Point r = round.get((i + 2) % 4);
      double turn = (q.x() - p.x()) * (r.y() - q.y()) - (q.y() - p.y()) * (r.x() - q.x());
      if (turn <= leastTurn * p.distance(q) * q.distance(r)) {
        return false;
      }
    }
    return true;
  }

  /** Where a place comes to lie. */
  public Point map(Point p) {
    double w = h[6] * p.x() + h[7] * p.y() + 1;
    return new Point(
        (h[0] * p.x() + h[1] * p.y() + h[2]) / w, (h[3] * p.x() + h[4] * p.y() + h[5]) / w);
  }

  /** Where the corners of a zone come to lie, clockwise from the upper left. */
  public List<Point> map(Zone zone) {
    return List.of(map(zone.at(0, 0)), map(zone.at(1, 0)), map(zone.at(1, 1)), map(zone.at(0, 1)));
  }

  /** How long a step of one unit becomes around a place: the root of the change of area. */
  public double scaleAt(Point p) {
    double step = 0.5;
    Point left = map(p.plus(-step, 0));
    Point right = map(p.plus(step, 0));
    Point above = map(p.plus(0, -step));
    Point below = map(p.plus(0, step));
    double area =
        (right.x() - left.x()) * (below.y() - above.y())
            - (right.y() - left.y()) * (below.x() - above.x());
    return Math.sqrt(Math.abs(area));
  }

  /** Gauss's elimination with the largest pivot; the right side is the last column. */
  private static Optional<double[]> solve(double[][] rows) {
    for (int column = 0; column < UNKNOWNS; column++) {
      int pivot = column;
      for (int row = column + 1; row < UNKNOWNS; row++) {
        if (Math.abs(rows[row][column]) > Math.abs(rows[pivot][column])) {
          pivot = row;
        }
      }
      if (Math.abs(rows[pivot][column]) < SINGULAR) {
        return Optional.empty();
      }
      double[] swapped = rows[pivot];
      rows[pivot] = rows[column];
      rows[column] = swapped;
      for (int row = 0; row < UNKNOWNS; row++) {
        if (row != column) {
          double factor = rows[row][column] / rows[column][column];
          for (int k = column; k <= UNKNOWNS; k++) {
            rows[row][k] -= factor * rows[column][k];
          }
        }
      }
    }
    double[] solution = new double[UNKNOWNS];
    for (int i = 0; i < UNKNOWNS; i++) {
      solution[i] = rows[i][UNKNOWNS] / rows[i][i];
    }
    return Optional.of(solution);
  }
}
