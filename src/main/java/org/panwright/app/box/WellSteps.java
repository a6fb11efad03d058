package org.panwright.app.box;

import java.util.Comparator;
import java.util.Optional;
import org.panwright.kit.Box;
import org.panwright.kit.Well;

/** The well next to another as the hand would go, in any arrangement of wells. */
final class WellSteps {
  /** How much more a step aside costs than a step ahead. */
  private static final double ASIDE = 2.5;

  private WellSteps() {}

  /** The ways an arrow key points. */
  enum Way {
    LEFT(-1, 0),
    RIGHT(1, 0),
    UP(0, -1),
    DOWN(0, 1);

    private final int x;
    private final int y;

    Way(int x, int y) {
      this.x = x;
      this.y = y;
    }
  }

  /**
   * The nearest well that way: of all wells that begin beyond the middle of {@code from} the one
   * with the least
   *
   * <pre>ahead + 2.5 · aside</pre>
   *
   * from middle to middle, where aside counts only as far as the two wells' extents do not share
   * it. Empty at the edge of the box.
   */
  static Optional<Well> next(Box box, Well from, Way way) {
    return box.wells().stream()
        .filter(well -> ahead(from, well, way) - extent(well, way) / 2 >= 0)
        .min(
            Comparator.<Well>comparingDouble(w -> ahead(from, w, way) + ASIDE * aside(from, w, way))
                .thenComparingDouble(w -> Math.abs(across(from, w, way))));
  }

  private static double ahead(Well from, Well to, Way way) {
    return way.x * (middleX(to) - middleX(from)) + way.y * (middleY(to) - middleY(from));
  }

  private static double across(Well from, Well to, Way way) {
    return way.x == 0 ? middleX(to) - middleX(from) : middleY(to) - middleY(from);
  }

  private static double aside(Well from, Well to, Way way) {
    double shared =
        way.x == 0 ? (from.widthMm() + to.widthMm()) / 2 : (from.heightMm() + to.heightMm()) / 2;
    return Math.max(0, Math.abs(across(from, to, way)) - shared);
  }

  private static double extent(Well well, Way way) {
    return way.x == 0 ? well.heightMm() : well.widthMm();
  }

  private static double middleX(Well well) {
    return well.xMm() + well.widthMm() / 2;
  }

  private static double middleY(Well well) {
    return well.yMm() + well.heightMm() / 2;
  }
}
