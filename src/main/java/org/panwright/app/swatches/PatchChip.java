package org.panwright.app.swatches;

import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.sheet.PatchReading;

/**
 * One patch read, beside what the model makes of it.
 *
 * @param words what it is
 * @param read its colour
 * @param spread how uneven it is, CIEDE2000
 * @param beyond whether the picture cannot hold the colour
 * @param model what the paint's optics make of it, once they are known
 * @param distance CIEDE2000 between the two
 */
public record PatchChip(
    String words,
    Lab read,
    double spread,
    boolean beyond,
    Optional<Lab> model,
    Optional<Double> distance) {

  /** A patch and what a fit makes of its coat, if it was fitted. */
  public static PatchChip of(
      String words, PatchReading patch, Optional<PaintFitReport.CoatFit> fit) {
    return new PatchChip(
        words,
        patch.lab(),
        patch.spread(),
        patch.isBeyondPicture(),
        fit.map(coat -> Light.D65.lab(coat.predicted())),
        fit.map(PaintFitReport.CoatFit::ciede2000));
  }

  /** What a report says of a coat of a paint. */
  public static Optional<PaintFitReport.CoatFit> fit(
      Optional<String> paint, String coatId, Optional<PaintFitReport> report) {
    return report.stream()
        .flatMap(r -> r.coats().stream())
        .filter(coat -> paint.filter(coat.paintId()::equals).isPresent())
        .filter(coat -> coat.coat().id().equals(coatId))
        .findFirst();
  }
}
