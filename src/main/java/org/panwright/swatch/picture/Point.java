package org.panwright.swatch.picture;

/** A place in a plane: pixels of a picture or millimetres of a sheet, y growing downwards. */
public record Point(double x, double y) {
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a place must be finite, was %s, %s".formatted(x, y));
    }
  }

  /** The distance to another place. */
  public double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** The place moved. */
  public Point plus(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }
}
