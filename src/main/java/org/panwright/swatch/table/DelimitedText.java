package org.panwright.swatch.table;

import java.nio.charset.Charset;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as text, one line a row, cells between separators (RFC 4180), as programs of all kinds
 * write it.
 *
 * <p>UTF-8 and UTF-16 are known by their byte order mark, UTF-8 without one by its bytes being
 * valid, the rest is Windows-1252. Cells are parted by whichever of comma, semicolon and tab occurs
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
    return of(FileText.of(bytes), false);
  }

  /**
   * The table in a text.
   *
   * @param remarks whether lines that begin with # are left out
   */
  public static DelimitedText of(FileText file, boolean remarks) throws TableFaultException {
    DelimitedCells cells = new DelimitedCells(file.text(), remarks);
    List<Row> rows = cells.rows();
    if (rows.size() < 2) {
      throw new TableFaultException(new TableFault.NoTable());
    }
    return new DelimitedText(
        rows.get(0).cells(), rows.subList(1, rows.size()), file.encoding(), cells.separator());
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
            && DelimitedCells.SEPARATORS.chars().noneMatch(c -> cell.indexOf(c) >= 0);
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
