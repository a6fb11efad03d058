package org.panwright.swatch;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Comma-separated text (RFC 4180) without line breaks inside cells: lines that begin with # and
 * blank lines are left out, the first line that stays names the columns. If that line is parted by
 * semicolons or tabs, so are the others, and a decimal comma is a point.
 */
final class CsvText {
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+");

  private CsvText() {}

  static RawTable parse(List<String> marked) throws TableFaultException {
    List<String> lines = withoutMark(marked);
    List<String> columns = null;
    char separator = ',';
    List<RawTable.Row> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      if (columns == null) {
        separator = separator(line);
      }
      List<String> cells = cells(line, separator);
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

  /** The lines without the byte order mark some programs begin a UTF-8 file with. */
  static List<String> withoutMark(List<String> lines) {
    if (lines.isEmpty() || !lines.get(0).startsWith("\uFEFF")) {
      return lines;
    }
    List<String> plain = new ArrayList<>(lines);
    plain.set(0, plain.get(0).substring(1));
    return plain;
  }

  /** What parts the cells of the line that names the columns: whatever there is most of. */
  private static char separator(String line) {
    char most = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(line, candidate) > count(line, most)) {
        most = candidate;
      }
    }
    return most;
  }

  private static long count(String line, char wanted) {
    return line.chars().filter(c -> c == wanted).count();
  }

  private static String finished(StringBuilder cell, char separator) {
    String text = cell.toString().trim();
    boolean decimalComma = separator != ',' && DECIMAL_COMMA.matcher(text).matches();
    return decimalComma ? text.replace(',', '.') : text;
  }

  private static List<String> cells(String line, char separator) {
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
      } else if (c == separator && !quoted) {
        cells.add(finished(cell, separator));
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(finished(cell, separator));
    return cells;
  }
}
