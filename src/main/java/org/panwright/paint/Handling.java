package org.panwright.paint;

import java.util.Objects;

/** How a paint behaves under the brush and in the light. */
public record Handling(
    Transparency transparency,
    Staining staining,
    Granulation granulation,
    Lightfastness lightfastness) {
  public Handling {
    Objects.requireNonNull(transparency, "transparency");
    Objects.requireNonNull(staining, "staining");
    Objects.requireNonNull(granulation, "granulation");
    Objects.requireNonNull(lightfastness, "lightfastness");
  }

  /**
   * The handling of a mixture of two: of each property the more marked, of lightfastness the worse;
   * an unrated one counts as worse than I and II.
   */
  static Handling strongerOf(Handling a, Handling b) {
    return new Handling(
        later(a.transparency, b.transparency),
        later(a.staining, b.staining),
        later(a.granulation, b.granulation),
        worse(a.lightfastness, b.lightfastness));
  }

  private static Lightfastness worse(Lightfastness a, Lightfastness b) {
    if (a.isPoor() || b.isPoor()) {
      return a.isPoor() && b.isPoor() ? later(a, b) : a.isPoor() ? a : b;
    }
    return later(a, b);
  }

  private static <E extends Enum<E>> E later(E a, E b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
