package org.panwright.app.chart;

import java.util.List;
import java.util.Optional;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.grid.ExchangedLabels;
import org.panwright.swatch.grid.PaintedGrid;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingNote;

/**
 * All that is known of a hand-painted chart on the picture at one moment.
 *
 * @param grid what the cells are meant to hold; empty if nothing was read
 * @param cells those with paint in them, row by row
 * @param notes what makes their colours less sure
 * @param labels two rows or columns whose labels look exchanged, if so
 * @param fault why nothing could be read, if so
 * @param refusal why nothing can be foretold or learnt, if so
 * @param work what is still under way
 */
record ChartState(
    Optional<PaintedGrid> grid,
    List<ChartCell> cells,
    List<ReadingNote> notes,
    Optional<ExchangedLabels> labels,
    Optional<ReadingFault> fault,
    Optional<FitRefusal> refusal,
    Work work) {
  /** What is under way. */
  enum Work {
    NOTHING,
    READING,
    COMPARING,
    LEARNING,
    /** The painter did not want to wait for the cells to be compared. */
    LEFT_OFF
  }

  /** No picture, or its corners were not put in place yet. */
  static final ChartState NONE =
      new ChartState(
          Optional.empty(),
          List.of(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Work.NOTHING);

  ChartState {
    cells = List.copyOf(cells);
    notes = List.copyOf(notes);
  }

  ChartState working(Work changed) {
    return new ChartState(grid, cells, notes, labels, fault, refusal, changed);
  }

  ChartState withCells(List<ChartCell> changed) {
    return new ChartState(grid, changed, notes, labels, fault, refusal, work);
  }

  ChartState withRefusal(Optional<FitRefusal> changed) {
    return new ChartState(grid, cells, notes, labels, fault, changed, work);
  }
}
