package org.panwright.kit;

import java.util.Objects;
import java.util.Optional;

/**
 * One place of a box.
 *
 * @param id unique in its box, never changed
 * @param label what is printed beside it, for example "7" or "dab 2"
 * @param kind what it holds
 * @param xMm left edge from the box's inner left wall, 0 or more
 * @param yMm upper edge from the box's inner wall at the hinge, 0 or more
 * @param widthMm extent from left to right, 2..200
 * @param heightMm extent from the hinge to the front, 2..200
 * @param panId the kind of pan in it, if it is not the usual one for {@code kind}
 */
public record Well(
    String id,
    String label,
    WellKind kind,
    double xMm,
    double yMm,
    double widthMm,
    double heightMm,
    Optional<String> panId) {
  public Well {
    Objects.requireNonNull(kind, "kind");
    if (id.isBlank() || label.isBlank()) {
      throw new IllegalArgumentException("a well needs an id and a label");
    }
    if (!(xMm >= 0 && yMm >= 0 && xMm <= 1000 && yMm <= 1000)) {
      throw new IllegalArgumentException(
          "a well lies at 0..1000 mm, was %s, %s".formatted(xMm, yMm));
    }
    if (!(widthMm >= 2 && widthMm <= 200 && heightMm >= 2 && heightMm <= 200)) {
      throw new IllegalArgumentException(
          "a well measures 2..200 mm, was %s x %s".formatted(widthMm, heightMm));
    }
  }

  /** A well with the usual pan for its kind. */
  public Well(
      String id,
      String label,
      WellKind kind,
      double xMm,
      double yMm,
      double widthMm,
      double heightMm) {
    this(id, label, kind, xMm, yMm, widthMm, heightMm, Optional.empty());
  }

  /** The well with another kind of pan in it, or the usual one. */
  public Well withPan(Optional<String> changed) {
    return new Well(id, label, kind, xMm, yMm, widthMm, heightMm, changed);
  }

  /** Whether the places of two wells share some area. */
  public boolean overlaps(Well other) {
    return xMm < other.xMm + other.widthMm - TOUCHING_MM
        && other.xMm < xMm + widthMm - TOUCHING_MM
        && yMm < other.yMm + other.heightMm - TOUCHING_MM
        && other.yMm < yMm + heightMm - TOUCHING_MM;
  }

  /** Whether the well lies whole in an area of this size. */
  public boolean liesWithin(double areaWidthMm, double areaHeightMm) {
    return xMm + widthMm <= areaWidthMm + TOUCHING_MM
        && yMm + heightMm <= areaHeightMm + TOUCHING_MM;
  }

  private static final double TOUCHING_MM = 0.01;
}
