package org.panwright.swatch.grid;

import java.util.List;
import java.util.Optional;

/**
 * Whether two rows or two columns bear each other's label: all exchanges are tried, by what is
 * known of the paints before this chart is learnt from.
 */
final class LabelCheck {
  private static final double CAP = 25;
  private static final double CLEAR_SHARE = 0.6;
  private static final double CLEAR_GAIN = 4;

  private final GridReading reading;
  private final CellLaw known;

  LabelCheck(GridReading reading, CellLaw known) {
    this.reading = reading;
    this.known = known;
  }

  /** The clearest exchange, if one is clear. */
  Optional<ExchangedLabels> find() {
    PaintedGrid grid = reading.grid();
    if (grid.shape() == GridShape.ONE_EACH) {
      return Optional.empty();
    }
    Optional<ExchangedLabels> best = Optional.empty();
    for (boolean rows : List.of(true, false)) {
      int count = rows ? grid.rows() : grid.columns();
      for (int i = 0; i < count; i++) {
        for (int j = i + 1; j < count; j++) {
          PaintedGrid other = rows ? grid.withRowsExchanged(i, j) : grid.withColumnsExchanged(i, j);
          double before = mean(grid, rows, i, j);
          double after = mean(other, rows, i, j);
          boolean clear = before - after > CLEAR_GAIN && after < CLEAR_SHARE * before;
          if (clear && best.map(b -> before - after > b.before() - b.after()).orElse(true)) {
            best = Optional.of(new ExchangedLabels(rows, i, j, before, after));
          }
        }
      }
    }
    return best;
  }

  private double mean(PaintedGrid grid, boolean rows, int first, int second) {
    return reading.cells().stream()
        .filter(cell -> isIn(rows ? cell.row() : cell.column(), first, second))
        .mapToDouble(
            cell ->
                grid.content(cell.row(), cell.column())
                    .map(content -> known.nearest(content, cell.patch().lab()).distance())
                    .map(distance -> Math.min(CAP, distance))
                    .orElse(CAP))
        .average()
        .orElse(0);
  }

  private static boolean isIn(int place, int first, int second) {
    return place == first || place == second;
  }
}
