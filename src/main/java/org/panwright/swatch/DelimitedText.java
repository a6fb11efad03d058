package org.panwright.swatch;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as text, one line a row, cells between separators (RFC 4180), as programs of all kinds
 * write it.
 *
 * <p>Encoding and separator are found out: UTF-8 and UTF-16 by their byte order mark, UTF-8 without
 * one if the bytes are valid, else Windows-1252; of comma, semicolon and tab the one that occurs
 * most in the first line outside quotes. A cell in double quotes may hold separators, line breaks
 * and doubled quotes. Blank lines are left out.
 *
 * @param columns the cells of the first row
 * @param rows the rows after it
 * @param encoding as found
 * @param separator as found
 */
public record DelimitedText(
    List<String> columns, List<Row> rows, Charset encoding, char separator) {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final String SEPARATORS = ",;\t";

  /**
   * One row.
   *
   * @param line where it begins, from 1
   * @param cells without the white space around them
   */
  public record Row(int line, List<String> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  public DelimitedText {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * The table in the bytes of a file.
   *
   * @throws TableFaultException {@link TableFault.NoTable} if there is no row under the first,
   *     {@link TableFault.NotText} if the bytes are no text, {@link TableFault.CutShort} if a
   *     quoted cell never ends
   */
  public static DelimitedText read(byte[] bytes) throws TableFaultException {
    Charset encoding = encoding(bytes);
    String text = new String(bytes, encoding);
    if (text.startsWith("\uFEFF")) {
      text = text.substring(1);
    }
    if (text.indexOf('\0') >= 0) {
      throw new TableFaultException(new TableFault.NotText());
    }
    char separator = separator(text);
    List<Row> rows = new Cells(text, separator).rows();
    if (rows.size() < 2) {
      throw new TableFaultException(new TableFault.NoTable());
    }
    return new DelimitedText(
        rows.get(0).cells(), rows.subList(1, rows.size()), encoding, separator);
  }

  /** Rows as comma-separated text with CRLF line ends, as RFC 4180 has it. */
  public static String write(List<List<String>> rows) {
    return rows.stream()
        .map(row -> row.stream().map(DelimitedText::quoted).collect(Collectors.joining(",")))
        .map(line -> line + "\r\n")
        .collect(Collectors.joining());
  }

  private static String quoted(String cell) {
    boolean plain =
        cell.strip().equals(cell)
            && cell.chars().noneMatch(c -> c == '"' || c == '\n' || c == '\r')
            && SEPARATORS.chars().noneMatch(c -> cell.indexOf(c) >= 0);
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  private static Charset encoding(byte[] bytes) {
    int first = bytes.length > 0 ? bytes[0] & 0xFF : 0;
    int second = bytes.length > 1 ? bytes[1] & 0xFF : 0;
    if ((first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF)) {
      return StandardCharsets.UTF_16;
    }
    try {
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .decode(ByteBuffer.wrap(bytes));
      return StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      return WINDOWS_1252;
    }
  }

  private static char separator(String text) {
    int[] count = new int[SEPARATORS.length()];
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r') && !text.substring(0, i).isBlank()) {
        break;
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

  /** Takes a text apart; one use. */
  private static final class Cells {
    private final String text;
    private final char separator;
    private final List<Row> rows = new ArrayList<>();
    private final StringBuilder cell = new StringBuilder();
    private List<String> cells = new ArrayList<>();
    private int line = 1;
    private int rowLine = 1;
    private boolean wasQuoted;

    Cells(String text, char separator) {
      this.text = text.replace("\r\n", "\n").replace('\r', '\n');
      this.separator = separator;
    }

    List<Row> rows() throws TableFaultException {
      int at = 0;
      while (at < text.length()) {
        char c = text.charAt(at);
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
      cells.add(cell.toString().strip());
      cell.setLength(0);
      wasQuoted = false;
    }

    private void endRow() {
      endCell();
      if (cells.stream().anyMatch(found -> !found.isEmpty())) {
        rows.add(new Row(rowLine, cells));
      }
      cells = new ArrayList<>();
      line++;
      rowLine = line;
    }
  }
}
