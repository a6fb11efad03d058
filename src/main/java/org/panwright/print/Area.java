package org.panwright.print;

/**
 * An upright rectangle on a sheet, in millimetres from the sheet's upper left corner, y growing
 * downwards.
 *
 * @param widthMm 0 or more
 * @param heightMm 0 or more
 */
public record Area(double xMm, double yMm, double widthMm, double heightMm) {
  public Area {
    if (!(widthMm >= 0 && heightMm >= 0 && Double.isFinite(xMm + yMm + widthMm + heightMm))) {
      throw new IllegalArgumentException(
          "an area must be finite and not negative, was %s, %s, %s x %s"
              .formatted(xMm, yMm, widthMm, heightMm));
    }
  }

  /** The right edge. */
  public double rightMm() {
    return xMm + widthMm;
  }

  /** The lower edge. */
  public double bottomMm() {
    return yMm + heightMm;
  }

  /** The area made smaller by {@code mm} on every side; never below nothing. */
  public Area inset(double mm) {
    double dx = Math.min(mm, widthMm / 2);
    double dy = Math.min(mm, heightMm / 2);
    return new Area(xMm + dx, yMm + dy, widthMm - 2 * dx, heightMm - 2 * dy);
  }

  /** The area moved. */
  public Area moved(double dxMm, double dyMm) {
    return new Area(xMm + dxMm, yMm + dyMm, widthMm, heightMm);
  }

  /** Whether the two share more than {@code slackMm} in both directions. */
  public boolean overlaps(Area other, double slackMm) {
    return Math.min(rightMm(), other.rightMm()) - Math.max(xMm, other.xMm) > slackMm
        && Math.min(bottomMm(), other.bottomMm()) - Math.max(yMm, other.yMm) > slackMm;
  }

  /** Whether {@code other} lies within, give or take {@code slackMm}. */
  public boolean contains(Area other, double slackMm) {
    return other.xMm >= xMm - slackMm
        && other.yMm >= yMm - slackMm
        && other.rightMm() <= rightMm() + slackMm
        && other.bottomMm() <= bottomMm() + slackMm;
  }
}
