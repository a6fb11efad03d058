package org.panwright.kit.table;

import java.util.List;

/**
 * One row of a table in hand.
 *
 * @param line where it stands in its file, from 1
 * @param cells its texts
 */
public record SourceRow(int line, List<String> cells) {
  public SourceRow {
    cells = List.copyOf(cells);
  }
}
