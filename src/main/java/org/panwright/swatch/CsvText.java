package org.panwright.swatch;

import java.util.ArrayList;
import java.util.List;

/**
 * Comma-separated text (RFC 4180) without line breaks inside cells: lines that begin with # and
 * blank lines are left out, the first line that stays names the columns.
 */
final class CsvText {
  private CsvText() {}

  static RawTable parse(List<String> lines) throws TableFaultException {
    List<String> columns = null;
    List<RawTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = i == 0 ? withoutMark(lines.get(i)) : lines.get(i);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = cells(line);
      if (columns == null) {
        columns = cells;
        requireDistinct(columns);
      } else if (cells.size() == columns.size()) {
        rows.add(new RawTable.Row(i + 1, cells));
      } else {
        throw new TableFaultException(
            new TableFault.WrongCellCount(i + 1, columns.size(), cells.size()));
      }
    }
    if (rows.isEmpty()) {
      throw new TableFaultException(new TableFault.NoTable());
    }
    return new RawTable(columns, rows);
  }

  private static void requireDistinct(List<String> columns) throws TableFaultException {
    for (int i = 0; i < columns.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (columns.get(i).equalsIgnoreCase(columns.get(j))) {
          throw new TableFaultException(new TableFault.ColumnTwice(columns.get(i)));
        }
      }
    }
  }

  /** Some programs begin a UTF-8 file with a byte order mark. */
  private static String withoutMark(String line) {
    return line.startsWith("\uFEFF") ? line.substring(1) : line;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().trim());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString().trim());
    return cells;
  }
}
