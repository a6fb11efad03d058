package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.kit.Kit;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.RowCheck;
import org.panwright.swatch.sheet.RowReading;
import org.panwright.swatch.sheet.SheetReading;
import org.panwright.swatch.sheet.SwappedRows;
import org.panwright.words.PaintPageWords;
import org.panwright.words.PictureWords;
import org.panwright.words.SwatchWords;
import org.panwright.words.SwatchesWords;

/** Sentences about a read sheet: its picture, its rows, its paints. */
public final class SheetRemarks {
  private SheetRemarks() {}

  static List<String> of(
      List<SheetRow> rows,
      Kit kit,
      Optional<SwappedRows> swapped,
      Optional<SheetReading> reading,
      SheetChoices choices,
      Map<String, List<PaintedCoat>> wet,
      Optional<PaintFitReport> report) {
    List<String> remarks = new ArrayList<>();
    long foreign =
        rows.stream()
            .filter(row -> row.reading().mark().isPresent() && row.paintId().isEmpty())
            .count();
    if (foreign > 0) {
      remarks.add(SwatchesWords.foreign((int) foreign, rows.size()));
    }
    reading.flatMap(page -> alike(rows, page)).ifPresent(remarks::add);
    swapped.ifPresent(
        s ->
            remarks.add(
                SwatchesWords.swapped(
                    name(kit, rows.get(s.first())),
                    name(kit, rows.get(s.second())),
                    s.before(),
                    s.after())));
    if (choices.wet() && reading.isPresent()) {
      remarks.add(SwatchesWords.wet(wet.values().stream().mapToInt(List::size).sum()));
    }
    odd(kit, report).ifPresent(remarks::add);
    report.flatMap(SwatchWords::darks).ifPresent(remarks::add);
    reading.ifPresent(page -> page.notes().forEach(n -> remarks.add(PictureWords.sentence(n))));
    remarks.addAll(held(rows));
    return remarks;
  }

  /** The coat that disagrees with the rest, in a sentence, if one does. */
  public static Optional<String> odd(Kit kit, Optional<PaintFitReport> report) {
    return report
        .flatMap(PaintFitReport::odd)
        .map(odd -> PaintPageWords.odd(odd, id -> kit.shelf().find(id).map(Paint::name)));
  }

  private static Optional<String> alike(List<SheetRow> rows, SheetReading page) {
    List<Integer> alike =
        rows.stream()
            .filter(row -> row.paintId().isPresent())
            .map(SheetRow::reading)
            .filter(row -> RowCheck.isAllAlike(row, page.paper()))
            .map(row -> row.row() + 1)
            .toList();
    return alike.isEmpty()
        ? Optional.empty()
        : Optional.of(SwatchesWords.alike(alike, rows.size()));
  }

  private static List<String> held(List<SheetRow> rows) {
    HeldRemarks held = new HeldRemarks();
    for (SheetRow row : rows) {
      RowReading read = row.reading();
      read.onPaper()
          .forEach((kind, patch) -> held.add(place(read, SwatchesWords.patch(kind)), patch));
      Optional.ofNullable(read.onLine().get(PatchKind.FULL))
          .ifPresent(patch -> held.add(place(read, SwatchesWords.ON_LINE), patch));
      read.line().ifPresent(line -> held.add(place(read, SwatchesWords.LINE), line));
    }
    return held.sentences();
  }

  private static String place(RowReading row, String patch) {
    return SwatchesWords.row(row.row() + 1) + ", " + patch;
  }

  /** Two rows that look exchanged, as places in the list. */
  static Optional<SwappedRows> swapped(List<SheetRow> rows, Kit kit, PigmentLibrary library) {
    List<Integer> places = new ArrayList<>();
    List<RowReading> readings = new ArrayList<>();
    List<Optics> known = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Optional<Paint> paint = rows.get(i).paintId().flatMap(kit.shelf()::find);
      if (paint.isPresent()) {
        places.add(i);
        readings.add(rows.get(i).reading());
        known.add(paint.get().optics(library));
      }
    }
    return RowCheck.swapped(readings, known, kit.paper())
        .map(
            s ->
                new SwappedRows(
                    places.get(s.first()), places.get(s.second()), s.before(), s.after()));
  }

  private static String name(Kit kit, SheetRow row) {
    return row.paintId().flatMap(kit.shelf()::find).map(Paint::name).orElse("");
  }
}
