package org.panwright.swatch.picture;

/**
 * An upright rectangle in a plane, in the unit of the plane.
 *
 * @param width above 0
 * @param height above 0
 */
public record Zone(double x, double y, double width, double height) {
  public Zone {
    if (!(width > 0 && height > 0 && Double.isFinite(x + y + width + height))) {
      throw new IllegalArgumentException(
          "a zone needs an extent, was %s, %s, %s x %s".formatted(x, y, width, height));
    }
  }

  /** A square around a middle. */
  public static Zone around(Point middle, double side) {
    return new Zone(middle.x() - side / 2, middle.y() - side / 2, side, side);
  }

  /** The right edge. */
  public double right() {
    return x + width;
  }

  /** The lower edge. */
  public double bottom() {
    return y + height;
  }

  /** The middle. */
  public Point middle() {
    return new Point(x + width / 2, y + height / 2);
  }

  /** The place at shares 0..1 of width and height. */
  public Point at(double across, double down) {
    return new Point(x + across * width, y + down * height);
  }

  /** The middle part that leaves out {@code share} of width and height on every side, 0..0.49. */
  public Zone inner(double share) {
    return new Zone(
        x + share * width, y + share * height, width * (1 - 2 * share), height * (1 - 2 * share));
  }
}
