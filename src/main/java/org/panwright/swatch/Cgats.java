package org.panwright.swatch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Adaptation;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;

/**
 * A measurement file of the graphic trade: the text form of ANSI CGATS.17 and ISO 28178.
 *
 * <p>Keywords stand one to a line; the names of the columns between BEGIN_DATA_FORMAT and
 * END_DATA_FORMAT, the rows between BEGIN_DATA and END_DATA, cells parted by blanks, texts with
 * blanks in quotation marks, remarks after #. A decimal comma is taken as a point. Where the file
 * says how many columns and rows it holds, it must hold them. The first table of the file that
 * holds reflectances or L*, a*, b* counts.
 *
 * <p>Reflectances: columns that end in a wavelength, as {@link ReadingColumns} finds them, or pairs
 * of SPECTRAL_NM with SPECTRAL_PCT or SPECTRAL_DEC. L*, a*, b*: under D50 with the 2° observer, the
 * trade's standard (ISO 13655), unless the file's keywords name D65; they are brought to D65 by
 * linear Bradford adaptation.
 */
public final class Cgats {
  private final List<String> lines;
  private final Map<String, String> keywords = new HashMap<>();
  private int at;

  private Cgats(List<String> lines) {
    this.lines = CsvText.withoutMark(lines);
  }

  /**
   * One reading of such a file.
   *
   * @param name the sample's name, or its number where it has none
   * @param reading what was read
   */
  public record Sample(String name, Reading reading) {}

  /**
   * Reads the lines of such a file.
   *
   * @throws TableFaultException naming line and column of what is wrong
   */
  public static List<Sample> read(List<String> lines) throws TableFaultException {
    return file(lines).samples();
  }

  /** The same with what its columns were taken for. */
  static ReadingFile file(List<String> lines) throws TableFaultException {
    return new Cgats(lines).table();
  }

  private ReadingFile table() throws TableFaultException {
    TableFault reason = new TableFault.NoTable();
    for (Optional<RawTable> table = next(); table.isPresent(); table = next()) {
      RawTable plain = CgatsPairs.unpaired(table.get());
      try {
        ReadingColumns columns = ReadingColumns.of(plain);
        return ReadingFile.of(samples(plain, columns), columns);
      } catch (TableFaultException fault) {
        if (!(fault.fault() instanceof TableFault.NoReadings)) {
          throw fault;
        }
        reason = fault.fault();
      }
    }
    throw new TableFaultException(reason);
  }

  private List<Sample> samples(RawTable table, ReadingColumns columns) throws TableFaultException {
    int name = Math.max(table.find("SAMPLE_NAME"), table.find("SAMPLE_ID"));
    if (table.find("SAMPLE_NAME") >= 0) {
      name = table.find("SAMPLE_NAME");
    }
    List<Sample> samples = new ArrayList<>();
    for (RawTable.Row row : table.rows()) {
      String said = name < 0 ? "" : row.cells().get(name);
      samples.add(
          new Sample(
              said.isBlank() ? Integer.toString(samples.size() + 1) : said,
              columns.isSpectral()
                  ? new Reading.OfSpectrum(columns.reflectance(row))
                  : new Reading.OfColour(underD65(columns.lab(row)))));
    }
    return samples;
  }

  private Lab underD65(Lab lab) {
    boolean isD65 =
        keywords.values().stream().anyMatch(said -> said.toUpperCase(Locale.ROOT).contains("D65"));
    if (isD65) {
      return lab;
    }
    return Lab.of(
        Adaptation.adapt(lab.toXyz(Light.D50.white()), Light.D50.white(), Light.D65.white()),
        Light.D65.white());
  }

  /** The next table of the file; empty at its end. */
  private Optional<RawTable> next() throws TableFaultException {
    List<String> columns = List.of();
    CgatsCount fields = new CgatsCount("NUMBER_OF_FIELDS");
    CgatsCount sets = new CgatsCount("NUMBER_OF_SETS");
    while (at < lines.size()) {
      List<String> words = CgatsWords.of(lines.get(at));
      at++;
      if (words.isEmpty()) {
        continue;
      }
      if (words.get(0).equalsIgnoreCase("BEGIN_DATA_FORMAT")) {
        columns = columns();
        fields.requireSame(columns.size());
      } else if (words.get(0).equalsIgnoreCase("BEGIN_DATA")) {
        List<RawTable.Row> rows = rows(columns);
        sets.requireSame(rows.size());
        return Optional.of(new RawTable(columns, rows));
      } else {
        fields.note(words, at);
        sets.note(words, at);
        keywords.put(
            words.get(0).toUpperCase(Locale.ROOT) + at,
            String.join(" ", words.subList(1, words.size())));
      }
    }
    return Optional.empty();
  }

  private List<String> columns() throws TableFaultException {
    List<String> columns = new ArrayList<>();
    for (; at < lines.size(); at++) {
      List<String> words = CgatsWords.of(lines.get(at));
      if (!words.isEmpty() && words.get(0).equalsIgnoreCase("END_DATA_FORMAT")) {
        at++;
        return columns;
      }
      columns.addAll(words);
    }
    throw new TableFaultException(new TableFault.CutShort(lines.size()));
  }

  private List<RawTable.Row> rows(List<String> columns) throws TableFaultException {
    List<RawTable.Row> rows = new ArrayList<>();
    for (; at < lines.size(); at++) {
      List<String> words = CgatsWords.of(lines.get(at));
      if (words.isEmpty()) {
        continue;
      }
      if (words.get(0).equalsIgnoreCase("END_DATA")) {
        at++;
        return rows;
      }
      if (words.size() != columns.size()) {
        throw new TableFaultException(
            new TableFault.WrongCellCount(at + 1, columns.size(), words.size()));
      }
      rows.add(new RawTable.Row(at + 1, words.stream().map(Cgats::withDecimalPoint).toList()));
    }
    throw new TableFaultException(new TableFault.CutShort(lines.size()));
  }

  private static String withDecimalPoint(String cell) {
    return cell.matches("[-+]?\\d+,\\d+") ? cell.replace(',', '.') : cell;
  }
}
