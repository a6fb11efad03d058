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
 * @param lines where the file has a column for each sample: the line of each column here, its rows
 *     being the file's columns; else empty
 */
public record RawTable(List<String> columns, List<DelimitedText.Row> rows, List<Integer> lines) {
  public RawTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
    lines = List.copyOf(lines);
  }

  /** A table as it stands in its file. */
  public RawTable(List<String> columns, List<DelimitedText.Row> rows) {
    this(columns, rows, List.of());
  }

  /**
   * The table in a delimited text. Lines that begin with # are remarks; others may stand above the
   * names of the columns. Measurements are wanted whole: rows have a cell for each column, and no
   * two columns the same name.
   */
  public static RawTable of(FileText file) throws TableFaultException {
    return written(file).withDistinctColumns();
  }

  /** The same of a file in which columns may have the same name. */
  public static RawTable written(FileText file) throws TableFaultException {
    FileText below = new FileText(Preamble.asRemarks(file.text()), file.encoding());
    DelimitedText text = DelimitedText.of(below, true);
    List<DelimitedText.Row> rows = new ArrayList<>();
    for (DelimitedText.Row row : text.rows()) {
      rows.add(ofWidth(row, text.columns().size()));
    }
    return new RawTable(text.columns(), rows);
  }

  /**
   * The same.
   *
   * @throws TableFaultException {@link TableFault.ColumnTwice} if two columns have the same name
   */
  public RawTable withDistinctColumns() throws TableFaultException {
    Set<String> seen = new HashSet<>();
    for (String column : columns) {
      if (!column.isEmpty() && !seen.add(column.toLowerCase(Locale.ROOT))) {
        throw new TableFaultException(new TableFault.ColumnTwice(column));
      }
    }
    return this;
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

  /** Whether the file has a column for each sample. */
  public boolean isTurned() {
    return !lines.isEmpty();
  }

  /** The line of a cell in its file, from 1. */
  public int line(DelimitedText.Row row, int place) {
    return isTurned() ? lines.get(place) : row.line();
  }

  /** The name of the column a cell has in its file. */
  public String column(DelimitedText.Row row, int place) {
    return isTurned() ? row.cells().get(0) : columns.get(place);
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
