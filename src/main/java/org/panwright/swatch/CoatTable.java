package org.panwright.swatch;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.panwright.swatch.ReadingMapping.ReadingLight;

/**
 * A delimited file of coats: what was painted and what was read.
 *
 * <p>Columns: {@code sample}; for each paint of a coat a pair {@code paint_a}, {@code ml_a}, then
 * {@code paint_b}, {@code ml_b} and so on; then the readings, as {@link ReadingColumns} finds them.
 * Cells of a paint not used stay empty; an empty amount, or no column of amounts, is an amount
 * nobody knows, which is fitted. A row without any paint is the bare paper. Lines that begin with #
 * are remarks.
 *
 * @param paper the reading of the bare paper, if the file has one
 * @param coats the other rows in order
 */
public record CoatTable(Optional<Reading> paper, List<Row> coats) {
  /** What a coat has of a paint if nobody knows: one usual coat. */
  private static final double UNKNOWN_LOAD = 1;

  private static final double DOUBT_OF_UNKNOWN = 0.7;

  public CoatTable {
    coats = List.copyOf(coats);
  }

  /**
   * One coat.
   *
   * @param name the sample's name
   * @param paints what lies in it; a load that was not given is a {@link #UNKNOWN_LOAD}
   * @param reading of the dry coat
   * @param measured whether every load was given
   */
  public record Row(String name, List<PaintLoad> paints, Reading reading, boolean measured) {
    public Row {
      paints = List.copyOf(paints);
    }
  }

  /**
   * Reads such a file.
   *
   * @throws TableFaultException naming line and column of what is wrong
   */
  public static CoatTable read(byte[] file) throws TableFaultException {
    RawTable table = RawTable.of(FileText.of(file));
    int sample = require(table, "sample");
    List<int[]> pairs = paintColumns(table);
    ReadingColumns columns = ReadingColumns.of(table, ReadingHeads.guess(table, ReadingLight.D65));
    Optional<Reading> paper = Optional.empty();
    List<Row> coats = new ArrayList<>();
    for (DelimitedText.Row row : table.rows()) {
      List<PaintLoad> paints = paints(table, columns, row, pairs);
      Reading reading = columns.reading(row);
      if (!paints.isEmpty()) {
        coats.add(new Row(name(table, row, sample), paints, reading, isMeasured(row, pairs)));
      } else if (paper.isPresent()) {
        throw new TableFaultException(new TableFault.PaperTwice(row.line()));
      } else {
        paper = Optional.of(reading);
      }
    }
    return new CoatTable(paper, coats);
  }

  /**
   * The coats as swatches on the file's paper.
   *
   * @throws TableFaultException if the file has no bare paper
   */
  public SwatchSet swatches() throws TableFaultException {
    if (paper.isEmpty()) {
      throw new TableFaultException(new TableFault.NoPaper());
    }
    return new SwatchSet(
        coats.stream()
            .map(
                row ->
                    new Swatch(
                        row.name(),
                        row.paints(),
                        row.reading(),
                        paper.get(),
                        row.measured() ? 0 : DOUBT_OF_UNKNOWN))
            .toList());
  }

  private static int require(RawTable table, String column) throws TableFaultException {
    int place = table.find(column);
    if (place < 0) {
      throw new TableFaultException(new TableFault.NoColumn(column));
    }
    return place;
  }

  private static List<int[]> paintColumns(RawTable table) throws TableFaultException {
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      String column = table.columns().get(i).toLowerCase(Locale.ROOT);
      if (column.startsWith("paint_")) {
        pairs.add(new int[] {i, table.find("ml_" + column.substring("paint_".length()))});
      }
    }
    if (pairs.isEmpty()) {
      throw new TableFaultException(new TableFault.NoColumn("paint_a"));
    }
    return pairs;
  }

  private static String name(RawTable table, DelimitedText.Row row, int place)
      throws TableFaultException {
    String name = row.cells().get(place);
    if (name.isEmpty()) {
      throw new TableFaultException(
          new TableFault.EmptyCell(row.line(), table.columns().get(place)));
    }
    return name;
  }

  private static boolean isMeasured(DelimitedText.Row row, List<int[]> pairs) {
    return pairs.stream()
        .filter(pair -> !row.cells().get(pair[0]).isEmpty())
        .allMatch(pair -> pair[1] >= 0 && !row.cells().get(pair[1]).isEmpty());
  }

  private static List<PaintLoad> paints(
      RawTable table, ReadingColumns columns, DelimitedText.Row row, List<int[]> pairs)
      throws TableFaultException {
    List<PaintLoad> paints = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int[] pair : pairs) {
      String paint = row.cells().get(pair[0]);
      boolean given = pair[1] >= 0 && !row.cells().get(pair[1]).isEmpty();
      String column = pair[1] < 0 ? "" : table.columns().get(pair[1]);
      if (paint.isEmpty()) {
        if (given) {
          throw new TableFaultException(new TableFault.AmountWithoutPaint(row.line(), column));
        }
        continue;
      }
      double load = given ? columns.number(row, pair[1]) : UNKNOWN_LOAD;
      if (!(load > 0)) {
        throw new TableFaultException(
            new TableFault.OutOfRange(row.line(), column, 0, Double.POSITIVE_INFINITY, load));
      }
      if (!seen.add(paint)) {
        throw new TableFaultException(new TableFault.PaintTwice(row.line(), paint));
      }
      paints.add(new PaintLoad(paint, load));
    }
    return paints;
  }
}
