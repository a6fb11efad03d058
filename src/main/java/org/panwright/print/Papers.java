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

  /** Whether a letter or sign had to be replaced by {@link Script#PLACEHOLDER}. */
  public boolean holdsPlaceholder() {
    return sheets.stream()
        .flatMap(sheet -> sheet.singleMarks().stream())
        .anyMatch(
            mark -> mark instanceof Mark.Text text && text.text().contains(Script.PLACEHOLDER));
  }

  /** The same papers for a printer without colour: each colour as the grey that is as light. */
  public Papers inGrey() {
    return new Papers(title, sheets.stream().map(GreyPrint::of).toList());
  }
}
