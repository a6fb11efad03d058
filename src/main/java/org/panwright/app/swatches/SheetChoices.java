package org.panwright.app.swatches;

import java.util.Optional;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;

/**
 * What the painter says about a sheet.
 *
 * @param wet whether it was taken freshly wet
 * @param whiteId the white stirred in; empty for any opaque white
 * @param blackId the black stirred in; empty for any black
 */
record SheetChoices(boolean wet, Optional<String> whiteId, Optional<String> blackId) {
  /** A dry sheet, any white and black. */
  static final SheetChoices DRY = new SheetChoices(false, Optional.empty(), Optional.empty());

  /** The first white and the first black of a shelf. */
  static SheetChoices guess(Shelf shelf) {
    return new SheetChoices(false, first(shelf, "PW"), first(shelf, "PBk"));
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

  /** A paint of pigments of one kind only, by the letters their names begin with. */
  private static Optional<String> first(Shelf shelf, String kind) {
    return shelf.paints().stream()
        .filter(
            paint ->
                paint.pigments().stream()
                    .allMatch(share -> share.pigment().code().matches(kind + "\\d.*")))
        .map(Paint::id)
        .findFirst();
  }
}
