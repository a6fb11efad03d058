package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * A table with a row for each wavelength and a column for each sample, as many instruments export
 * it, turned so that each sample is a row.
 *
 * <p>It is known by its first column: at least eight wavelengths that span 150 nm, while the heads
 * of the columns name neither a spectrum nor L*, a*, b*. Rows above and below the wavelengths (a
 * date, L*, a*, b*) become columns like the others. Two samples may have the same name.
 */
final class TurnedTable {
  private static final int FEWEST_WAVELENGTHS = 8;
  private static final double LEAST_SPAN_NM = 150;

  private TurnedTable() {}

  /** Whether a table is one. */
  static boolean isOne(RawTable table) {
    return isSpectrum(
            table.rows().stream().map(row -> ReadingHeads.plainWavelength(row.cells().get(0))))
        && !isSpectrum(table.columns().stream().map(ReadingHeads::wavelength))
        && !ReadingHeads.nameColour(table.columns());
  }

  /**
   * The same with a row for each sample.
   *
   * @throws TableFaultException if a wavelength between the first and the last is missing, no
   *     number, or out of order
   */
  static RawTable of(RawTable table) throws TableFaultException {
    requireOrder(table);
    List<String> columns = new ArrayList<>(List.of(table.columns().get(0)));
    List<Integer> lines = new ArrayList<>(List.of(table.rows().get(0).line() - 1));
    for (DelimitedText.Row row : table.rows()) {
      columns.add(row.cells().get(0));
      lines.add(row.line());
    }
    List<DelimitedText.Row> samples = new ArrayList<>();
    for (int place = 1; place < table.columns().size(); place++) {
      List<String> cells = new ArrayList<>(List.of(table.columns().get(place)));
      for (DelimitedText.Row row : table.rows()) {
        cells.add(row.cells().get(place));
      }
      if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
        samples.add(new DelimitedText.Row(place + 1, cells));
      }
    }
    if (samples.isEmpty()) {
      throw new TableFaultException(new TableFault.NoTable());
    }
    return new RawTable(columns, samples, lines);
  }

  private static boolean isSpectrum(Stream<OptionalDouble> named) {
    double[] nm = named.flatMapToDouble(OptionalDouble::stream).toArray();
    return nm.length >= FEWEST_WAVELENGTHS && Math.abs(nm[nm.length - 1] - nm[0]) >= LEAST_SPAN_NM;
  }

  private static void requireOrder(RawTable table) throws TableFaultException {
    String head = table.columns().get(0);
    List<DelimitedText.Row> rows = table.rows();
    int[] named =
        IntStream.range(0, rows.size())
            .filter(i -> ReadingHeads.plainWavelength(rows.get(i).cells().get(0)).isPresent())
            .toArray();
    double before = Double.NaN;
    boolean falls = nm(rows.get(named[0])) > nm(rows.get(named[named.length - 1]));
    for (int i = named[0]; i <= named[named.length - 1]; i++) {
      int line = rows.get(i).line();
      String cell = rows.get(i).cells().get(0);
      if (cell.isEmpty()) {
        throw new TableFaultException(new TableFault.EmptyCell(line, head));
      }
      if (ReadingHeads.plainWavelength(cell).isEmpty()) {
        throw new TableFaultException(new TableFault.NotANumber(line, head, cell));
      }
      double nm = nm(rows.get(i));
      if (falls ? nm >= before : nm <= before) {
        throw new TableFaultException(new TableFault.LineOutOfOrder(line, cell));
      }
      before = nm;
    }
  }

  private static double nm(DelimitedText.Row row) {
    return ReadingHeads.plainWavelength(row.cells().get(0)).orElseThrow();
  }
}
