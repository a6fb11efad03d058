package org.panwright.app.boxes;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a well moved by hand comes to rest: at a wall, flush with a neighbour or close beside it,
 * else on the half millimetre.
 */
final class Snap {
  /** How near an edge has to come to be caught. */
  private static final double REACH_MM = 1.2;

  /** The gap usual between neighbours. */
  private static final double GAP_MM = 0.5;

  private final BoxDraft box;

  private Snap(BoxDraft box) {
    this.box = box;
  }

  static Snap in(BoxDraft box) {
    return new Snap(box);
  }

  /** The well with its corner near the place asked for. */
  WellDraft placed(WellDraft well, double xMm, double yMm) {
    List<Double> columns = new ArrayList<>(List.of(0.0, box.widthMm() - well.widthMm()));
    List<Double> rows = new ArrayList<>(List.of(0.0, box.heightMm() - well.heightMm()));
    for (WellDraft other : box.wells()) {
      if (!other.id().equals(well.id())) {
        columns.addAll(along(other.xMm(), other.widthMm(), well.widthMm()));
        rows.addAll(along(other.yMm(), other.heightMm(), well.heightMm()));
      }
    }
    return well.at(caught(xMm, columns), caught(yMm, rows));
  }

  /** Flush with both edges of a neighbour, and beside it on both sides. */
  private static List<Double> along(double start, double length, double own) {
    double end = start + length;
    return List.of(start, end - own, end + GAP_MM, start - GAP_MM - own);
  }

  private static double caught(double asked, List<Double> places) {
    double best = Math.rint(2 * asked) / 2;
    double nearest = REACH_MM;
    for (double place : places) {
      double away = Math.abs(place - asked);
      if (place >= 0 && away < nearest) {
        nearest = away;
        best = place;
      }
    }
    return best;
  }
}
