package org.panwright.app.swatches;

import java.util.List;
import java.util.Optional;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.SheetReading;
import org.panwright.swatch.sheet.SwappedRows;

/**
 * All that is known of a printed sheet on the picture at one moment.
 *
 * @param reading what was read off it, if it could be
 * @param fault why nothing could be read, if so
 * @param rows those with paint on them
 * @param report what the paints learn from it and all they knew; that of the choices before until
 *     learning is done
 * @param refusal why they cannot learn, if so
 * @param swapped two rows that look exchanged, as places in {@code rows}
 * @param remarks what there is to say about it
 * @param stage whether the report is of the coats as they are
 */
record SheetState(
    Optional<SheetReading> reading,
    Optional<ReadingFault> fault,
    List<SheetRow> rows,
    Optional<PaintFitReport> report,
    Optional<FitRefusal> refusal,
    Optional<SwappedRows> swapped,
    List<String> remarks,
    Learning.Stage stage) {
  /** No picture. */
  static final SheetState NONE =
      new SheetState(
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Learning.Stage.DONE);

  SheetState {
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /** Whether a newer report is on its way. */
  boolean learning() {
    return stage == Learning.Stage.RUNNING;
  }
}
