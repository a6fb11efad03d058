package org.panwright.app.chart;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.grid.CellReading;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.swatch.grid.GridJudgement;
import org.panwright.swatch.grid.GridReading;
import org.panwright.swatch.grid.JudgedCell;
import org.panwright.swatch.sheet.ReadingFault;

/** What is shown of a chart after each step of the work on it. */
final class ChartStates {
  private ChartStates() {}

  /** Nothing could be read. */
  static ChartState unread(Optional<ReadingFault> fault) {
    return new ChartState(
        Optional.empty(),
        List.of(),
        List.of(),
        Optional.empty(),
        fault,
        Optional.empty(),
        ChartState.Work.NOTHING);
  }

  /**
   * Cells were read and are being compared. What was foretold of those that still hold what they
   * held stays until it is known anew.
   */
  static ChartState read(GridReading reading, ChartState before, CellWishes wishes) {
    Map<CellReading, JudgedCell> former = new HashMap<>();
    for (CellReading cell : reading.cells()) {
      before.cells().stream()
          .filter(was -> was.isAt(cell.row(), cell.column()))
          .filter(was -> was.reading().content().equals(cell.content()))
          .flatMap(was -> was.judged().stream())
          .filter(was -> was.partner().isEmpty())
          .findFirst()
          .ifPresent(was -> former.put(cell, was));
    }
    return new ChartState(
        Optional.of(reading.grid()),
        cells(reading, former, wishes),
        reading.notes(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        ChartState.Work.COMPARING);
  }

  /** Cells were compared, or could not be. */
  static ChartState compared(
      GridReading reading,
      Optional<GridJudgement> judgement,
      Optional<FitRefusal> refusal,
      CellWishes wishes) {
    Map<CellReading, JudgedCell> judged = new HashMap<>();
    judgement.ifPresent(j -> j.cells().forEach(cell -> judged.put(cell.cell(), cell)));
    return new ChartState(
        Optional.of(reading.grid()),
        cells(reading, judged, wishes),
        reading.notes(),
        judgement.flatMap(GridJudgement::exchangedLabels),
        Optional.empty(),
        refusal,
        ChartState.Work.NOTHING);
  }

  private static List<ChartCell> cells(
      GridReading reading, Map<CellReading, JudgedCell> judged, CellWishes wishes) {
    return reading.cells().stream()
        .map(
            cell -> {
              Optional<JudgedCell> known = Optional.ofNullable(judged.get(cell));
              boolean agrees = known.filter(j -> j.verdict() == CellVerdict.AGREES).isPresent();
              return new ChartCell(cell, known, wishes.isKept(cell, agrees));
            })
        .toList();
  }
}
