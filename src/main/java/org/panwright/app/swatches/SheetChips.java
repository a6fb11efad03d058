package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.PatchReading;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetCoats;
import org.panwright.words.SwatchesWords;

/** The patches of a row beside what a fit makes of them. */
final class SheetChips {
  private SheetChips() {}

  static List<PatchChip> of(
      RowReading row, Optional<String> paint, SheetCoats coats, Optional<PaintFitReport> report) {
    List<PatchChip> chips = new ArrayList<>();
    for (PatchKind kind : PatchKind.values()) {
      PatchReading patch = row.onPaper().get(kind);
      if (patch != null) {
        chips.add(
            PatchChip.of(
                SwatchesWords.patch(kind),
                patch,
                PatchChip.fit(paint, coats.id(kind, false), report)));
      }
    }
    PatchReading over = row.onLine().get(PatchKind.FULL);
    if (over != null) {
      chips.add(
          PatchChip.of(
              SwatchesWords.ON_LINE,
              over,
              PatchChip.fit(paint, coats.id(PatchKind.FULL, true), report)));
    }
    return chips;
  }
}
