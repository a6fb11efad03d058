package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * A measurement file of the graphic trade: the text form of ANSI CGATS.17 and ISO 28178.
 *
 * <p>Keywords stand one to a line; the names of the columns between BEGIN_DATA_FORMAT and
 * END_DATA_FORMAT, the rows between BEGIN_DATA and END_DATA, cells parted by blanks, texts with
 * blanks in quotation marks, remarks after #. Where the file says how many columns and rows it
 * holds, it must hold them. Of several tables the first that holds reflectances counts, or, where
 * none does, the first that holds L*, a*, b*.
 *
 * <p>Reflectances: columns that end in a wavelength, as {@link ReadingHeads} finds them, or pairs
 * of SPECTRAL_NM with SPECTRAL_PCT or SPECTRAL_DEC. L*, a*, b*: under D50 with the 2° observer, the
 * trade's standard (ISO 13655), unless the file's keywords name D65; they are brought to D65 by
 * linear Bradford adaptation.
 */
final class Cgats {
  private final List<String> lines;
  private final Map<String, String> keywords = new HashMap<>();
  private int at;

  private Cgats(List<String> lines) {
    this.lines = lines;
  }

  /**
   * Reads the lines of such a file: its first table of reflectances, else of colours, else its
   * first.
   *
   * @throws TableFaultException naming line and column of what is wrong
   */
  static ReadingFile read(List<String> lines) throws TableFaultException {
    return new Cgats(lines).file();
  }

  private ReadingFile file() throws TableFaultException {
    List<ReadingFile> files = new ArrayList<>();
    for (Optional<RawTable> table = next(); table.isPresent(); table = next()) {
      if (!table.get().rows().isEmpty()) {
        RawTable plain = CgatsPairs.unpaired(table.get());
        files.add(new ReadingFile(plain, ReadingHeads.guess(plain, light())));
      }
    }
    return Stream.<Predicate<ReadingMapping>>of(
            ReadingMapping::isSpectral, ReadingMapping::isComplete, any -> true)
        .flatMap(wanted -> files.stream().filter(file -> wanted.test(file.guess())))
        .findFirst()
        .orElseThrow(() -> new TableFaultException(new TableFault.NoTable()));
  }

  private ReadingLight light() {
    boolean isD65 =
        keywords.values().stream().anyMatch(said -> said.toUpperCase(Locale.ROOT).contains("D65"));
    return isD65 ? ReadingLight.D65 : ReadingLight.D50;
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
        List<DelimitedText.Row> rows = rows(columns);
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

  private List<DelimitedText.Row> rows(List<String> columns) throws TableFaultException {
    List<DelimitedText.Row> rows = new ArrayList<>();
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
      rows.add(new DelimitedText.Row(at + 1, words));
    }
    throw new TableFaultException(new TableFault.CutShort(lines.size()));
  }
}
