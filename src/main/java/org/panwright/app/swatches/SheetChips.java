package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.swatch.PaintFitReport;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.PatchReading;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetCoats;
import org.panwright.words.SwatchesWords;

/** The patches of a row beside what a fit makes of them. */
final class SheetChips {
  private SheetChips() {}

  static List<SheetRow.Chip> of(
      RowReading row, Optional<String> paint, SheetCoats coats, Optional<PaintFitReport> report) {
    List<SheetRow.Chip> chips = new ArrayList<>();
    for (PatchKind kind : PatchKind.values()) {
      PatchReading patch = row.onPaper().get(kind);
      if (patch != null) {
        chips.add(
            chip(SwatchesWords.patch(kind), patch, fit(paint, coats.id(kind, false), report)));
      }
    }
    PatchReading over = row.onLine().get(PatchKind.FULL);
    if (over != null) {
      chips.add(
          chip(SwatchesWords.ON_LINE, over, fit(paint, coats.id(PatchKind.FULL, true), report)));
    }
    return chips;
  }

  private static SheetRow.Chip chip(
      String words, PatchReading patch, Optional<PaintFitReport.CoatFit> fit) {
    Optional<Lab> model = fit.map(coat -> Light.D65.lab(coat.predicted()));
    return new SheetRow.Chip(
        words,
        patch.lab(),
        patch.spread(),
        patch.isBeyondPicture(),
        model,
        fit.map(PaintFitReport.CoatFit::ciede2000));
  }

  private static Optional<PaintFitReport.CoatFit> fit(
      Optional<String> paint, String coatId, Optional<PaintFitReport> report) {
    return report.stream()
        .flatMap(r -> r.coats().stream())
        .filter(coat -> paint.filter(coat.paintId()::equals).isPresent())
        .filter(coat -> coat.coat().id().equals(coatId))
        .findFirst();
  }
}
