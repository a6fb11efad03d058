package org.panwright.app.swatches;

import java.util.Optional;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;
import org.panwright.print.SwatchSheet;

/**
 * What the painter says about a sheet.
 *
 * @param wet whether it was taken freshly wet
 * @param whiteId the white stirred in; empty for any opaque white
 * @param blackId the black stirred in; empty for any black
 */
public record SheetChoices(boolean wet, Optional<String> whiteId, Optional<String> blackId) {
  /** A dry sheet, any white and black. */
  static final SheetChoices DRY = new SheetChoices(false, Optional.empty(), Optional.empty());

  /** The first white and the first black of a shelf. */
  public static SheetChoices guess(Shelf shelf) {
    return new SheetChoices(
        false,
        SwatchSheet.first(shelf, "PW").map(Paint::id),
        SwatchSheet.first(shelf, "PBk").map(Paint::id));
  }

  SheetChoices withWet(boolean changed) {
    return new SheetChoices(changed, whiteId, blackId);
  }

  SheetChoices withWhite(Optional<String> changed) {
    return new SheetChoices(wet, changed, blackId);
  }

  SheetChoices withBlack(Optional<String> changed) {
    return new SheetChoices(wet, whiteId, changed);
  }
}
