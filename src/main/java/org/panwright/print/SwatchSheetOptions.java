package org.panwright.print;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.words.PaperWords;
import org.panwright.words.SwatchSheetWords;

/**
 * What the painter chooses about a swatch sheet, which is painted, then read from a scan or photo.
 *
 * @param paper what it is printed on
 */
public record SwatchSheetOptions(PaperFormat paper) implements PaperOrder {
  /** On A4. */
  public static final SwatchSheetOptions USUAL = new SwatchSheetOptions(PaperFormat.A4);

  public SwatchSheetOptions {
    Objects.requireNonNull(paper, "paper");
  }

  @Override
  public PaperKind kind() {
    return PaperKind.SWATCH_SHEET;
  }

  @Override
  public SwatchSheetOptions withPaper(PaperFormat changed) {
    return new SwatchSheetOptions(changed);
  }

  @Override
  public Made make(Occasion occasion) {
    if (occasion.paints().isEmpty()) {
      return Made.nothing(PaperWords.NO_PAINTS);
    }
    Optional<SheetFormat> format =
        Stream.of(SheetFormat.values())
            .filter(sheet -> sheet.name().equals(paper.name()))
            .findFirst();
    int wished = SwatchSheet.wished(occasion.paints());
    List<String> notes = wished == 0 ? List.of() : List.of(SwatchSheetWords.wished(wished));
    return format
        .map(f -> new Made(Optional.of(of(occasion, f)), notes))
        .orElseGet(() -> Made.nothing(PaperWords.SWATCH_SHEET_FORMATS));
  }

  private static Papers of(Occasion occasion, SheetFormat format) {
    return SwatchSheet.of(
        occasion.lineup().name(),
        SwatchSheet.rows(occasion.kit().shelf(), occasion.paints()),
        format);
  }
}
