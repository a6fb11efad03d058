package org.panwright.app.swatches;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;
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
    RowReading reading, Optional<String> paintId, List<Chip> chips, Optional<String> learnt) {
  SheetRow {
    chips = List.copyOf(chips);
  }

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
  record Chip(
      String words,
      Lab read,
      double spread,
      boolean beyond,
      Optional<Lab> model,
      Optional<Double> distance) {}
}
