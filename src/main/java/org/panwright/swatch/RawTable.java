package org.panwright.swatch;

import java.util.List;

/**
 * A table of texts, before anyone asks what they mean.
 *
 * @param columns the names of the columns, in order
 * @param rows the rows; each has as many cells as there are columns
 */
record RawTable(List<String> columns, List<Row> rows) {
  RawTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /** The place of a column by name, whatever its case; −1 if there is none. */
  int find(String name) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).equalsIgnoreCase(name)) {
        return i;
      }
    }
    return -1;
  }

  /**
   * One row.
   *
   * @param line its line in the file, from 1
   * @param cells trimmed texts
   */
  record Row(int line, List<String> cells) {
    Row {
      cells = List.copyOf(cells);
    }
  }
}
