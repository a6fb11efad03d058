package org.panwright.app.swatches;

import java.util.List;
import java.util.Optional;
import org.panwright.swatch.sheet.RowReading;

/**
 * One row of a read sheet, as it is listed.
 *
 * @param reading what was read
 * @param paintId the paint it holds; empty if nobody said yet
 * @param chips its patches in order
 * @param learnt what its paint has learnt, in words, once it has
 */
record SheetRow(
    RowReading reading, Optional<String> paintId, List<PatchChip> chips, Optional<String> learnt) {
  SheetRow {
    chips = List.copyOf(chips);
  }
}
