package org.panwright.app.chart;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import org.panwright.swatch.grid.PaintedGrid;

/** Which of a chart's cells is looked at. */
final class CellCursor {
  /** No cell. */
  static final int NONE = -1;

  private final Supplier<ChartState> state;
  private final IntegerProperty picked = new SimpleIntegerProperty(NONE);

  /**
   * @param state what is known of the chart now
   */
  CellCursor(Supplier<ChartState> state) {
    this.state = state;
  }

  /** The place in the list of cells of the one looked at, or {@link #NONE}. */
  IntegerProperty pickedProperty() {
    return picked;
  }

  /** The cell looked at. */
  Optional<ChartCell> picked() {
    int at = picked.get();
    List<ChartCell> cells = state.get().cells();
    return at >= 0 && at < cells.size() ? Optional.of(cells.get(at)) : Optional.empty();
  }

  /** Looks at no cell. */
  void leave() {
    picked.set(NONE);
  }

  /** Looks at the cell in a row and column, if there is paint in it. */
  void pick(int row, int column) {
    List<ChartCell> cells = state.get().cells();
    for (int i = 0; i < cells.size(); i++) {
      if (cells.get(i).isAt(row, column)) {
        picked.set(i);
      }
    }
  }

  /** Looks at the next painted cell in a direction. */
  void step(int down, int right) {
    Optional<PaintedGrid> grid = state.get().grid();
    if (grid.isEmpty() || picked().isEmpty()) {
      picked.set(state.get().cells().isEmpty() ? NONE : 0);
      return;
    }
    int row = picked().get().reading().row() + down;
    int column = picked().get().reading().column() + right;
    int before = picked.get();
    while (picked.get() == before
        && row >= 0
        && column >= 0
        && row < grid.get().rows()
        && column < grid.get().columns()) {
      pick(row, column);
      row += down;
      column += right;
    }
  }
}
