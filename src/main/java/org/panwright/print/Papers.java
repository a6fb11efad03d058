package org.panwright.print;

import java.util.List;

/**
 * Sheets that belong together and are saved as one PDF.
 *
 * @param title shown by readers in place of the file's name
 * @param sheets at least one
 */
public record Papers(String title, List<Sheet> sheets) {
  public Papers {
    sheets = List.copyOf(sheets);
    if (sheets.isEmpty()) {
      throw new IllegalArgumentException("papers need a sheet");
    }
  }
}
