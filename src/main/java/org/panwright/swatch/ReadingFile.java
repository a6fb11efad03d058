package org.panwright.swatch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A file of readings of which only the painter knows what was painted: a {@link Cgats} file or
 * plain comma-separated columns, and what its columns were taken for.
 *
 * @param samples in the file's order, at least one
 * @param wavelengths the wavelengths read in nanometres; empty if the file holds L*, a*, b*
 * @param percent whether reflectances were in percent
 */
public record ReadingFile(List<Cgats.Sample> samples, List<Double> wavelengths, boolean percent) {
  private static final List<String> NAMES =
      List.of("SAMPLE_NAME", "sample", "name", "SAMPLE_ID", "id");

  public ReadingFile {
    samples = List.copyOf(samples);
    wavelengths = List.copyOf(wavelengths);
  }

  /**
   * Reads the lines of either kind of file.
   *
   * @throws TableFaultException naming line and column of what is wrong
   */
  public static ReadingFile read(List<String> lines) throws TableFaultException {
    boolean cgats =
        lines.stream()
            .anyMatch(line -> line.strip().toUpperCase(Locale.ROOT).startsWith("BEGIN_DATA"));
    ReadingFile file = cgats ? Cgats.file(lines) : csv(lines);
    if (file.samples().isEmpty()) {
      throw new TableFaultException(new TableFault.NoTable());
    }
    return file;
  }

  private static ReadingFile csv(List<String> lines) throws TableFaultException {
    RawTable table = CsvText.parse(lines);
    ReadingColumns columns = ReadingColumns.of(table);
    int name = -1;
    for (String candidate : NAMES) {
      name = name < 0 ? table.find(candidate) : name;
    }
    List<Cgats.Sample> samples = new ArrayList<>();
    for (RawTable.Row row : table.rows()) {
      String said = name < 0 ? "" : row.cells().get(name);
      Reading reading =
          columns.isSpectral()
              ? new Reading.OfSpectrum(columns.reflectance(row))
              : new Reading.OfColour(columns.lab(row));
      samples.add(
          new Cgats.Sample(said.isEmpty() ? Integer.toString(samples.size() + 1) : said, reading));
    }
    return of(samples, columns);
  }

  static ReadingFile of(List<Cgats.Sample> samples, ReadingColumns columns) {
    return new ReadingFile(samples, columns.wavelengths(), columns.isPercent());
  }
}
