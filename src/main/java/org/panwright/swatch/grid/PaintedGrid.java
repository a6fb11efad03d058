package org.panwright.swatch.grid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.panwright.paint.Wash;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/**
 * A hand-painted chart: which paints its rows and columns hold and what their cells mean. Its unit
 * is the side of a cell; (0, 0) is the upper left corner of the first cell.
 *
 * @param rowPaints paint ids from top to bottom; for {@link GridShape#ONE_EACH} all paints in
 *     reading order
 * @param columnPaints paint ids from left to right; for ONE_EACH empty
 * @param columns how many cells lie side by side
 */
public record PaintedGrid(
    GridShape shape, List<String> rowPaints, List<String> columnPaints, int columns) {
  private static final double EDGE = 0.2;
  private static final double LEADING_PARTS = 3;

  public PaintedGrid {
    rowPaints = List.copyOf(rowPaints);
    columnPaints = List.copyOf(columnPaints);
    if (rowPaints.isEmpty() || columns < 1) {
      throw new IllegalArgumentException(
          "a grid needs cells, had %d by %d".formatted(rowPaints.size(), columns));
    }
    if (shape != GridShape.ONE_EACH && columnPaints.size() != columns) {
      throw new IllegalArgumentException(
          "%d columns hold %d paints".formatted(columns, columnPaints.size()));
    }
  }

  /** A chart of every pair of some paints, rows and columns in the same order. */
  public static PaintedGrid ofPairs(GridShape shape, List<String> paints) {
    return new PaintedGrid(shape, paints, paints, paints.size());
  }

  /** Single paints in reading order. */
  public static PaintedGrid ofSingles(List<String> paints, int columns) {
    return new PaintedGrid(GridShape.ONE_EACH, paints, List.of(), columns);
  }

  /** How many cells lie one below the other. */
  public int rows() {
    return shape == GridShape.ONE_EACH
        ? (rowPaints.size() + columns - 1) / columns
        : rowPaints.size();
  }

  /** The corners of the whole, clockwise from the upper left. */
  public List<Point> corners() {
    return List.of(
        new Point(0, 0), new Point(columns, 0), new Point(columns, rows()), new Point(0, rows()));
  }

  /** What a cell is meant to hold; empty where none was to be painted. */
  public Optional<CellContent> content(int row, int column) {
    if (shape == GridShape.ONE_EACH) {
      int at = row * columns + column;
      return at < rowPaints.size()
          ? Optional.of(new CellContent(rowPaints.get(at), Optional.empty(), 1, Wash.CREAM))
          : Optional.empty();
    }
    if (shape.leavesBare(row, column)) {
      return Optional.empty();
    }
    String first = rowPaints.get(row);
    Optional<String> second = Optional.of(columnPaints.get(column)).filter(id -> !id.equals(first));
    return Optional.of(new CellContent(first, second, rowParts(), wash(row, column)));
  }

  private double rowParts() {
    return switch (shape) {
      case ROW_LEADS -> LEADING_PARTS;
      case COLUMN_LEADS -> 1 / LEADING_PARTS;
      default -> 1;
    };
  }

  private Wash wash(int row, int column) {
    if (shape != GridShape.THICK_AND_THIN) {
      return Wash.MILK;
    }
    return column >= row ? Wash.CREAM : Wash.COFFEE;
  }

  /** Where a cell is read, clear of its edges. */
  public Zone zone(int row, int column) {
    return square(row, column).inner(EDGE);
  }

  /** The whole square of a cell. */
  public Zone square(int row, int column) {
    return new Zone(column, row, 1, 1);
  }

  /** Where bare paper is looked for: beside and below the chart, and in cells left bare. */
  public List<Zone> bareZones() {
    List<Zone> bare = new ArrayList<>();
    for (int row = 0; row < rows(); row++) {
      bare.add(new Zone(columns + 0.12, row + 0.2, 0.25, 0.6));
      for (int column = 0; column < columns; column++) {
        if (content(row, column).isEmpty()) {
          bare.add(zone(row, column));
        }
      }
    }
    for (int column = 0; column < columns; column++) {
      bare.add(new Zone(column + 0.2, rows() + 0.12, 0.6, 0.25));
    }
    return bare;
  }

  /** The same with two of its rows' paints exchanged. */
  public PaintedGrid withRowsExchanged(int first, int second) {
    return new PaintedGrid(shape, exchanged(rowPaints, first, second), columnPaints, columns);
  }

  /** The same with two of its columns' paints exchanged. */
  public PaintedGrid withColumnsExchanged(int first, int second) {
    return new PaintedGrid(shape, rowPaints, exchanged(columnPaints, first, second), columns);
  }

  private static List<String> exchanged(List<String> paints, int first, int second) {
    List<String> changed = new ArrayList<>(paints);
    Collections.swap(changed, first, second);
    return changed;
  }
}
