package org.panwright.swatch.table;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Takes a delimited text apart into rows of cells (RFC 4180); one use. */
final class DelimitedCells {
  /** What may part cells; the first wins where they are equally many, as texts hold commas. */
  static final String SEPARATORS = "\t;,";

  /** Blanks of all kinds, those that hold words together too, as spreadsheets leave them. */
  private static final Pattern BLANKS_AROUND = Pattern.compile("^[\\s\\p{Z}]+|[\\s\\p{Z}]+$");

  private final String text;
  private final boolean remarks;
  private final char separator;
  private final List<DelimitedText.Row> rows = new ArrayList<>();
  private final StringBuilder cell = new StringBuilder();
  private List<String> cells = new ArrayList<>();
  private int line = 1;
  private int rowLine = 1;
  private boolean wasQuoted;

  /**
   * @param text with line ends of one character
   * @param remarks whether lines that begin with # are left out
   */
  DelimitedCells(String text, boolean remarks) {
    this.text = text;
    this.remarks = remarks;
    separator = mostUsed();
  }

  /** What parts the cells: of {@link #SEPARATORS} the one the first row has most of. */
  char separator() {
    return separator;
  }

  /** The rows with anything in them. */
  List<DelimitedText.Row> rows() throws TableFaultException {
    int at = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (isRemark(at)) {
        at = lineEnd(at);
        continue;
      }
      if (c == '"' && cell.toString().isBlank() && !wasQuoted) {
        at = quotedCell(at + 1);
        continue;
      }
      if (c == separator) {
        endCell();
      } else if (c == '\n') {
        endRow();
      } else {
        cell.append(c);
      }
      at++;
    }
    endRow();
    return rows;
  }

  /** Whether a # begins a line outside quotes. */
  private boolean isRemark(int at) {
    return remarks && text.charAt(at) == '#' && (at == 0 || text.charAt(at - 1) == '\n');
  }

  private int lineEnd(int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end;
  }

  /** Reads from after the opening quote to after the closing one. */
  private int quotedCell(int from) throws TableFaultException {
    cell.setLength(0);
    wasQuoted = true;
    int at = from;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c != '"') {
        line += c == '\n' ? 1 : 0;
        cell.append(c);
        at++;
      } else if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
        cell.append(c);
        at += 2;
      } else {
        return at + 1;
      }
    }
    throw new TableFaultException(new TableFault.CutShort(rowLine));
  }

  private void endCell() {
    cells.add(BLANKS_AROUND.matcher(cell).replaceAll(""));
    cell.setLength(0);
    wasQuoted = false;
  }

  private void endRow() {
    endCell();
    if (cells.stream().anyMatch(found -> !found.isEmpty())) {
      rows.add(new DelimitedText.Row(rowLine, cells));
    }
    cells = new ArrayList<>();
    line++;
    rowLine = line;
  }

  private char mostUsed() {
    int[] count = new int[SEPARATORS.length()];
    boolean quoted = false;
    for (int i = firstRow(); i < text.length() && (quoted || text.charAt(i) != '\n'); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && SEPARATORS.indexOf(c) >= 0) {
        count[SEPARATORS.indexOf(c)]++;
      }
    }
    int most = 0;
    for (int i = 1; i < count.length; i++) {
      most = count[i] > count[most] ? i : most;
    }
    return SEPARATORS.charAt(most);
  }

  /** Where the first line begins that is neither blank nor a remark. */
  private int firstRow() {
    int at = 0;
    while (at < text.length() && (isRemark(at) || text.substring(at, lineEnd(at)).isBlank())) {
      at = lineEnd(at) + 1;
    }
    return at;
  }
}
