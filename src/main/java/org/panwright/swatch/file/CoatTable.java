package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.FileText;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * A delimited file of coats: what was painted and what was read.
 *
 * <p>Columns: {@code sample}; for each paint of a coat a pair {@code paint_a}, {@code ml_a}, then
 * {@code paint_b}, {@code ml_b} and so on; then the readings, as {@link ReadingColumns} finds them.
 * The amounts may be in any unit, the same throughout: {@code g_a} does as well. Cells of a paint
 * not used stay empty; an empty amount, or no column of amounts, is an amount nobody knows, which
 * is fitted. A row without any paint is the bare paper. Lines that begin with # are remarks.
 *
 * @param paper the reading of the bare paper, if the file has one
 * @param coats the other rows in order
 */
public record CoatTable(Optional<Reading> paper, List<Row> coats) {
  private static final String PAINT = "paint_";

  private static final Pattern UNIT =
      Pattern.compile("(?:g|mg|µl|ul|l|amount|load|part|parts|drops|percent|%)_.+");

  private static final double DOUBT_OF_UNKNOWN = 0.7;

  public CoatTable {
    coats = List.copyOf(coats);
  }

  /**
   * One coat.
   *
   * @param name the sample's name
   * @param paints what lies in it; a load that was not given is that of a usual coat
   * @param reading of the dry coat
   * @param measured whether every load was given
   */
  public record Row(String name, List<PaintLoad> paints, Reading reading, boolean measured) {
    public Row {
      paints = List.copyOf(paints);
    }
  }

  /**
   * Reads such a file. A load that was not given is the {@link #usualLoad} of the file.
   *
   * @throws TableFaultException naming line and column of what is wrong
   */
  public static CoatTable read(byte[] file) throws TableFaultException {
    return read(file, read(file, 1).usualLoad());
  }

  /**
   * Reads such a file.
   *
   * @param unknown the load of a paint for which none was given
   * @throws TableFaultException naming line and column of what is wrong
   */
  public static CoatTable read(byte[] file, double unknown) throws TableFaultException {
    RawTable table = RawTable.of(FileText.of(file));
    int sample = require(table, "sample");
    List<int[]> pairs = paintColumns(table);
    ReadingColumns columns = ReadingColumns.of(table, ReadingHeads.guess(table, ReadingLight.D65));
    Optional<Reading> paper = Optional.empty();
    List<Row> coats = new ArrayList<>();
    for (DelimitedText.Row row : table.rows()) {
      List<PaintLoad> paints = paints(columns, row, pairs, unknown);
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
   * The load of a usual coat: the geometric mean over coats of one paint whose load was given, or
   * over all whose load was; 1 if none was.
   */
  public double usualLoad() {
    List<Row> given = coats.stream().filter(Row::measured).toList();
    List<Row> singles = given.stream().filter(row -> row.paints().size() == 1).toList();
    return Math.exp(
        (singles.isEmpty() ? given : singles)
            .stream()
                .mapToDouble(row -> row.paints().stream().mapToDouble(PaintLoad::load).sum())
                .map(Math::log)
                .average()
                .orElse(0));
  }

  /** How many coats have a paint of which no amount was given. */
  public int unmeasured() {
    return (int) coats.stream().filter(row -> !row.measured()).count();
  }

  /** The same with each paint by the name it goes by. */
  public CoatTable named(PaintNames names) {
    return new CoatTable(
        paper,
        coats.stream()
            .map(
                row ->
                    new Row(
                        row.name(),
                        row.paints().stream()
                            .map(part -> new PaintLoad(names.name(part.paint()), part.load()))
                            .toList(),
                        row.reading(),
                        row.measured()))
            .toList());
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
      if (column.startsWith(PAINT)) {
        pairs.add(new int[] {i, amountColumn(table, column.substring(PAINT.length()))});
      }
    }
    if (pairs.isEmpty()) {
      throw new TableFaultException(new TableFault.NoColumn("paint_a"));
    }
    return pairs;
  }

  /** The column of the amounts of a paint: ml_a, else any other of that letter; −1 if none. */
  private static int amountColumn(RawTable table, String letter) {
    int usual = table.find("ml_" + letter);
    for (int i = 0; usual < 0 && i < table.columns().size(); i++) {
      String column = table.columns().get(i).toLowerCase(Locale.ROOT);
      if (column.endsWith("_" + letter) && UNIT.matcher(column).matches()) {
        return i;
      }
    }
    return usual;
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
      ReadingColumns columns, DelimitedText.Row row, List<int[]> pairs, double unknown)
      throws TableFaultException {
    List<PaintLoad> paints = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int[] pair : pairs) {
      String paint = row.cells().get(pair[0]);
      boolean given = pair[1] >= 0 && !row.cells().get(pair[1]).isEmpty();
      String column = pair[1] < 0 ? "" : columns.head(pair[1]);
      if (paint.isEmpty()) {
        if (given) {
          throw new TableFaultException(new TableFault.AmountWithoutPaint(row.line(), column));
        }
        continue;
      }
      double load = given ? columns.number(row, pair[1]) : unknown;
      if (!(load > 0)) {
        throw new TableFaultException(
            new TableFault.OutOfRange(row.line(), column, 0, Double.POSITIVE_INFINITY, load));
      }
      if (!seen.add(PaintNames.key(paint))) {
        throw new TableFaultException(new TableFault.PaintTwice(row.line(), paint));
      }
      paints.add(new PaintLoad(paint, load));
    }
    return paints;
  }
}
