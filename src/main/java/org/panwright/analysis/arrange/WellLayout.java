package org.panwright.analysis.arrange;

import java.util.ArrayList;
import java.util.List;
import org.panwright.kit.Box;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;

/** How the wells of a box follow each other and which lie beside each other. */
final class WellLayout {
  /** Wells farther apart than this do not splash into each other. */
  private static final double BESIDE_MM = 6;

  /** They must face each other along at least so much. */
  private static final double FACING_MM = 2;

  private WellLayout() {}

  /** Whether two wells lie beside each other. */
  static boolean areNeighbours(Well one, Well other) {
    double across =
        Math.max(one.xMm(), other.xMm())
            - Math.min(one.xMm() + one.widthMm(), other.xMm() + other.widthMm());
    double down =
        Math.max(one.yMm(), other.yMm())
            - Math.min(one.yMm() + one.heightMm(), other.yMm() + other.heightMm());
    return (across <= BESIDE_MM && down <= -FACING_MM)
        || (down <= BESIDE_MM && across <= -FACING_MM);
  }

  /**
   * The wells in counting order; for the left hand each one's mirror image in its place: the well
   * of its kind not yet taken that lies nearest to where a mirror shows it.
   */
  static List<Well> order(Box box, boolean leftHanded) {
    if (!leftHanded) {
      return box.wells();
    }
    List<Well> free = new ArrayList<>(box.wells());
    List<Well> order = new ArrayList<>();
    for (Well well : box.wells()) {
      double x = box.widthMm() - well.xMm() - well.widthMm() / 2;
      double y = well.yMm() + well.heightMm() / 2;
      Well nearest = null;
      for (Well other : free) {
        boolean sameKind = isDab(other) == isDab(well);
        if (sameKind && (nearest == null || away(other, x, y) < away(nearest, x, y))) {
          nearest = other;
        }
      }
      order.add(nearest);
      free.remove(nearest);
    }
    return order;
  }

  static boolean isDab(Well well) {
    return well.kind() == WellKind.DAB;
  }

  private static double away(Well well, double x, double y) {
    return Math.hypot(well.xMm() + well.widthMm() / 2 - x, well.yMm() + well.heightMm() / 2 - y);
  }
}
