package org.panwright.swatch.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A table of texts, before anyone asks what they mean.
 *
 * @param columns the names of the columns, in order
 * @param rows the rows; each has as many cells as there are columns
 */
public record RawTable(List<String> columns, List<DelimitedText.Row> rows) {
  public RawTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * The table in a delimited text. Lines that begin with # are remarks; others may stand above the
   * names of the columns. Measurements are wanted whole: rows have a cell for each column, and no
   * two columns the same name.
   */
  public static RawTable of(FileText file) throws TableFaultException {
    FileText below = new FileText(Preamble.asRemarks(file.text()), file.encoding());
    DelimitedText text = DelimitedText.of(below, true);
    requireDistinct(text.columns());
    List<DelimitedText.Row> rows = new ArrayList<>();
    for (DelimitedText.Row row : text.rows()) {
      rows.add(ofWidth(row, text.columns().size()));
    }
    return new RawTable(text.columns(), rows);
  }

  private static void requireDistinct(List<String> columns) throws TableFaultException {
    Set<String> seen = new HashSet<>();
    for (String column : columns) {
      if (!column.isEmpty() && !seen.add(column.toLowerCase(Locale.ROOT))) {
        throw new TableFaultException(new TableFault.ColumnTwice(column));
      }
    }
  }

  /** The row without empty cells beyond the last column. */
  private static DelimitedText.Row ofWidth(DelimitedText.Row row, int width)
      throws TableFaultException {
    List<String> cells = row.cells();
    boolean plain = cells.size() >= width && cells.stream().skip(width).allMatch(String::isEmpty);
    if (!plain) {
      throw new TableFaultException(new TableFault.WrongCellCount(row.line(), width, cells.size()));
    }
    return new DelimitedText.Row(row.line(), cells.subList(0, width));
  }

  /** The place of a column by name, whatever its case; −1 if there is none. */
  public int find(String name) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).equalsIgnoreCase(name)) {
        return i;
      }
    }
    return -1;
  }
}
