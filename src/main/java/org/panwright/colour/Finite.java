package org.panwright.colour;

/** The check every colour record makes of its coordinates. */
final class Finite {
  private Finite() {}

  static void require(String space, double first, double second, double third) {
    if (!Double.isFinite(first) || !Double.isFinite(second) || !Double.isFinite(third)) {
      throw new IllegalArgumentException(
          "%s coordinates must be finite, were %s, %s, %s".formatted(space, first, second, third));
    }
  }
}
