package org.panwright.app.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.swatch.grid.PaintedGrid;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Point;

/** Where the cells of a chart lie on the picture. */
final class ChartOutlines {
  private ChartOutlines() {}

  /** Where each cell is read, and the whole square of the one looked at. */
  static List<List<Point>> of(PaintedGrid grid, List<Point> corners, Optional<ChartCell> looked) {
    Optional<Homography> place = place(grid.corners(), corners);
    if (place.isEmpty()) {
      return List.of();
    }
    List<List<Point>> lines = new ArrayList<>();
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        if (grid.content(row, column).isPresent()) {
          lines.add(place.get().map(grid.zone(row, column)));
        }
      }
    }
    looked
        .map(ChartCell::reading)
        .ifPresent(cell -> lines.add(place.get().map(grid.square(cell.row(), cell.column()))));
    return lines;
  }

  /** A place on the picture in the unit of the chart. */
  static Optional<Point> inChart(PaintedGrid grid, List<Point> corners, Point place) {
    return place(corners, grid.corners()).map(back -> back.map(place));
  }

  private static Optional<Homography> place(List<Point> from, List<Point> to) {
    return from.size() == 4 && to.size() == 4 ? Homography.of(from, to) : Optional.empty();
  }
}
