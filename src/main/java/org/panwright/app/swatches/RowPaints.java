package org.panwright.app.swatches;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;
import org.panwright.swatch.sheet.PaintMark;
import org.panwright.swatch.sheet.RowReading;

/** Which paint each row of a sheet holds: by what the painter says, else by the printed mark. */
final class RowPaints {
  private final Map<Integer, Optional<String>> said = new HashMap<>();

  /** Says it; none to leave the row out. */
  void say(int row, Optional<String> paintId) {
    said.put(row, paintId);
  }

  /** Forgets all that was said. */
  void clear() {
    said.clear();
  }

  /** That of a row, if it is on the shelf; empty if the row is left out or its mark is unknown. */
  Optional<String> of(RowReading row, Shelf shelf) {
    Optional<String> byHand = said.get(row.row());
    if (byHand != null) {
      return byHand.filter(id -> shelf.find(id).isPresent());
    }
    List<String> marked =
        shelf.paints().stream()
            .map(Paint::id)
            .filter(id -> row.mark().filter(PaintMark.of(id)::equals).isPresent())
            .toList();
    return marked.size() == 1 ? Optional.of(marked.get(0)) : Optional.empty();
  }
}
