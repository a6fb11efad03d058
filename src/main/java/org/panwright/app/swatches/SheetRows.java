package org.panwright.app.swatches;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetCoats;
import org.panwright.swatch.sheet.SheetReading;
import org.panwright.words.SwatchesWords;

/** The rows of a sheet as they are listed. */
final class SheetRows {
  private SheetRows() {}

  static List<SheetRow> of(
      SheetReading page,
      Function<RowReading, Optional<String>> paintOf,
      SheetCoats coats,
      Optional<PaintFitReport> report) {
    return page.rows().stream()
        .map(
            row -> {
              Optional<String> paint = paintOf.apply(row);
              return new SheetRow(
                  row,
                  paint,
                  SheetChips.of(row, paint, coats, report),
                  paint.flatMap(id -> report.flatMap(r -> learnt(id, r))));
            })
        .toList();
  }

  private static Optional<String> learnt(String paint, PaintFitReport report) {
    int coats = (int) report.coats().stream().filter(c -> c.paintId().equals(paint)).count();
    return Optional.ofNullable(report.optics().get(paint))
        .map(optics -> SwatchesWords.expected(optics.expectedError(), coats));
  }
}
