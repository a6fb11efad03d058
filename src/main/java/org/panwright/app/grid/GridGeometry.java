package org.panwright.app.grid;

import java.util.Optional;

/**
 * Where the cells of a grid lie in the space it is given, in pixels.
 *
 * @param size rows and columns
 * @param left width of the row heads
 * @param top height of the column heads
 * @param cellWidth width of a cell with its gap
 * @param cellHeight height of a cell with its gap
 */
record GridGeometry(int size, double left, double top, double cellWidth, double cellHeight) {
  private static final double WIDEST_CELL = 132;
  private static final double TALLEST_CELL = 66;

  /** A cell longer than this no longer reads as one swatch of a chart. */
  private static final double MOST_UNEVEN = 2.6;

  /** The largest cells that fit, within limits of size and shape. */
  static GridGeometry fitting(int size, double width, double height, double left, double top) {
    int count = Math.max(1, size);
    double cellWidth = Math.floor(Math.min(WIDEST_CELL, Math.max(4, (width - left) / count)));
    double cellHeight = Math.floor(Math.min(TALLEST_CELL, Math.max(4, (height - top) / count)));
    return new GridGeometry(
        size,
        left,
        top,
        Math.min(cellWidth, Math.floor(cellHeight * MOST_UNEVEN)),
        Math.min(cellHeight, Math.floor(cellWidth * MOST_UNEVEN)));
  }

  double x(int column) {
    return left + column * cellWidth;
  }

  double y(int row) {
    return top + row * cellHeight;
  }

  /** Row and column under a point. */
  Optional<int[]> cellAt(double x, double y) {
    int column = (int) Math.floor((x - left) / cellWidth);
    int row = (int) Math.floor((y - top) / cellHeight);
    boolean inside = row >= 0 && column >= 0 && row < size && column < size;
    return inside ? Optional.of(new int[] {row, column}) : Optional.empty();
  }
}
