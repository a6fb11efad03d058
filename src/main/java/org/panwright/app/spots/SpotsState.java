package org.panwright.app.spots;

import java.util.List;
import java.util.Optional;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PatchChip;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.spot.Spot;

/**
 * All that is known of the spots at one moment.
 *
 * @param rows one for each spot
 * @param needsPaper whether nothing can be read before a spot of bare paper or of a card is placed
 * @param fault why nothing could be read, if so
 * @param remarks what makes the colours less sure, in sentences
 * @param report what the paints learn from the spots and all they knew
 * @param refusal why they cannot, if so
 * @param stage whether all this is of the spots as they are
 */
record SpotsState(
    List<Row> rows,
    boolean needsPaper,
    Optional<ReadingFault> fault,
    List<String> remarks,
    Optional<PaintFitReport> report,
    Optional<FitRefusal> refusal,
    Learning.Stage stage) {
  /** No spots. */
  static final SpotsState NONE =
      new SpotsState(
          List.of(),
          false,
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Learning.Stage.DONE);

  SpotsState {
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /** Whether something is under way. */
  boolean working() {
    return stage == Learning.Stage.RUNNING;
  }

  /**
   * A spot as it is listed.
   *
   * @param chip its colour beside the model's; empty where it was not or cannot be read
   */
  record Row(Spot spot, Optional<PatchChip> chip) {}
}
