package org.panwright.swatch.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.panwright.swatch.grid.ExchangedLabels.Where;

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
    List<ExchangedLabels> clear = new ArrayList<>();
    for (Where where : Where.values()) {
      int count = where == Where.ROWS ? grid.rows() : grid.columns();
      boolean asked = where != Where.BOTH || grid.rowPaints().equals(grid.columnPaints());
      for (int i = 0; asked && i < count; i++) {
        for (int j = i + 1; j < count; j++) {
          clear(grid, new ExchangedLabels(where, i, j, 0, 0)).ifPresent(clear::add);
        }
      }
    }
    return clear.stream()
        .max(Comparator.comparingDouble(ExchangedLabels::gain))
        .map(best -> wider(clear, best));
  }

  /**
   * Exchanged rows of a chart look better at once, though its columns were exchanged with them;
   * then both together leave less than rows or columns alone.
   */
  private static ExchangedLabels wider(List<ExchangedLabels> clear, ExchangedLabels best) {
    return clear.stream()
        .filter(found -> found.where() == Where.BOTH)
        .filter(found -> found.first() == best.first() && found.second() == best.second())
        .filter(found -> found.after() < best.after())
        .findFirst()
        .orElse(best);
  }

  private Optional<ExchangedLabels> clear(PaintedGrid grid, ExchangedLabels asked) {
    PaintedGrid other = grid;
    if (asked.ofRows()) {
      other = other.withRowsExchanged(asked.first(), asked.second());
    }
    if (asked.ofColumns()) {
      other = other.withColumnsExchanged(asked.first(), asked.second());
    }
    double before = mean(grid, asked);
    double after = mean(other, asked);
    return before - after > CLEAR_GAIN && after < CLEAR_SHARE * before
        ? Optional.of(
            new ExchangedLabels(asked.where(), asked.first(), asked.second(), before, after))
        : Optional.empty();
  }

  private double mean(PaintedGrid grid, ExchangedLabels asked) {
    return reading.cells().stream()
        .filter(
            cell ->
                (asked.ofRows() && isIn(cell.row(), asked))
                    || (asked.ofColumns() && isIn(cell.column(), asked)))
        .mapToDouble(
            cell ->
                grid.content(cell.row(), cell.column())
                    .map(content -> known.nearest(content, cell.patch().lab()).distance())
                    .map(distance -> Math.min(CAP, distance))
                    .orElse(CAP))
        .average()
        .orElse(0);
  }

  private static boolean isIn(int place, ExchangedLabels asked) {
    return place == asked.first() || place == asked.second();
  }
}
