package org.panwright.app.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Paint;
import org.panwright.swatch.grid.ExchangedLabels;
import org.panwright.swatch.grid.GridShape;
import org.panwright.swatch.grid.PaintedGrid;

/**
 * What the painter says a chart holds.
 *
 * @param rows paint ids from top to bottom, none twice; for {@link GridShape#ONE_EACH} all paints
 *     in reading order
 * @param otherColumns paint ids from left to right, none twice; empty where the columns hold the
 *     paints of the rows in their order
 * @param across how many cells lie side by side in a chart of single paints
 */
record ChartPlan(
    GridShape shape, List<String> rows, Optional<List<String>> otherColumns, int across) {
  /** Longer charts than this are not offered. */
  static final int MOST = 40;

  private static final int AT_FIRST = 12;

  ChartPlan {
    rows = List.copyOf(rows);
    otherColumns = otherColumns.map(List::copyOf);
  }

  /**
   * A square chart of a lineup's paints in the order of its wells, or of the first of the shelf.
   */
  static ChartPlan of(Kit kit, Optional<Lineup> lineup) {
    List<String> paints =
        lineup
            .map(l -> List.copyOf(new LinkedHashSet<>(l.paintIds(kit.boxOf(l)))))
            .orElse(List.of());
    if (paints.isEmpty()) {
      paints = kit.shelf().paints().stream().map(Paint::id).limit(AT_FIRST).toList();
    }
    paints = paints.stream().limit(MOST).toList();
    return new ChartPlan(GridShape.SQUARE, paints, Optional.empty(), Math.max(1, across(paints)));
  }

  private static int across(List<String> paints) {
    return (int) Math.ceil(Math.sqrt(paints.size()));
  }

  /** The paints of the columns. */
  List<String> columns() {
    return otherColumns.orElse(rows);
  }

  /** Whether its cells hold pairs, so that it has rows and columns of paints. */
  boolean hasPairs() {
    return shape != GridShape.ONE_EACH;
  }

  /** The chart; empty while it has no paints. */
  Optional<PaintedGrid> grid() {
    if (rows.isEmpty() || (hasPairs() && columns().isEmpty())) {
      return Optional.empty();
    }
    return Optional.of(
        hasPairs()
            ? new PaintedGrid(shape, rows, columns(), columns().size())
            : PaintedGrid.ofSingles(rows, across));
  }

  ChartPlan withShape(GridShape changed) {
    return new ChartPlan(changed, rows, otherColumns, across);
  }

  ChartPlan withAcross(int changed) {
    return new ChartPlan(shape, rows, otherColumns, changed);
  }

  /** With columns that hold the rows' paints in their order, or such as can be chosen apart. */
  ChartPlan withSameColumns(boolean same) {
    return new ChartPlan(shape, rows, same ? Optional.empty() : Optional.of(columns()), across);
  }

  /** With another paint in a row or column; where it stood before, the former one now stands. */
  ChartPlan withPaint(boolean row, int place, String paint) {
    List<String> changed = new ArrayList<>(row ? rows : columns());
    int before = changed.indexOf(paint);
    if (before >= 0) {
      Collections.swap(changed, before, place);
    } else {
      changed.set(place, paint);
    }
    return with(row, changed);
  }

  /** With more or fewer rows or columns; those added hold the next paints of the shelf. */
  ChartPlan withCount(boolean row, int count, List<Paint> shelf) {
    List<String> now = row ? rows : columns();
    Set<String> changed = new LinkedHashSet<>(now.subList(0, Math.min(count, now.size())));
    for (Paint paint : shelf) {
      if (changed.size() < count) {
        changed.add(paint.id());
      }
    }
    return with(row, List.copyOf(changed));
  }

  /** With labels exchanged; where one list serves both and one side changes, it becomes two. */
  ChartPlan withExchanged(ExchangedLabels labels) {
    if (labels.where() == ExchangedLabels.Where.BOTH && otherColumns.isEmpty()) {
      List<String> changed = new ArrayList<>(rows);
      Collections.swap(changed, labels.first(), labels.second());
      return with(true, changed);
    }
    ChartPlan changed = this;
    if (labels.ofRows()) {
      changed = changed.withExchanged(true, labels.first(), labels.second());
    }
    return labels.ofColumns()
        ? changed.withExchanged(false, labels.first(), labels.second())
        : changed;
  }

  /** With two rows or columns exchanged; what was one list for both becomes two. */
  ChartPlan withExchanged(boolean row, int first, int second) {
    List<String> changed = new ArrayList<>(row ? rows : columns());
    Collections.swap(changed, first, second);
    return withSameColumns(false).with(row, changed);
  }

  /** Without paints that are not on a shelf any more. */
  ChartPlan within(Kit kit) {
    return new ChartPlan(shape, known(rows, kit), otherColumns.map(ids -> known(ids, kit)), across);
  }

  private ChartPlan with(boolean row, List<String> changed) {
    return row
        ? new ChartPlan(shape, changed, otherColumns, across)
        : new ChartPlan(shape, rows, Optional.of(changed), across);
  }

  private static List<String> known(List<String> ids, Kit kit) {
    return ids.stream().filter(id -> kit.shelf().find(id).isPresent()).toList();
  }
}
