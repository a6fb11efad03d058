package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.FileText;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * A file of readings of which only the painter knows what was painted: the text form of CGATS.17 or
 * plain delimited columns.
 *
 * @param table its texts
 * @param guess what its columns most likely hold
 */
public record ReadingFile(RawTable table, ReadingMapping guess) {
  /** L*, a*, b*. */
  private static final int FEWEST_COLUMNS = 3;

  /**
   * Reads either kind of file.
   *
   * @throws TableFaultException if it holds no table, or one that is no table of readings whatever
   *     its columns are taken for
   */
  public static ReadingFile read(byte[] file) throws TableFaultException {
    FileText text = FileText.of(file);
    boolean cgats =
        text.lines().stream()
            .anyMatch(line -> line.strip().toUpperCase(Locale.ROOT).startsWith("BEGIN_DATA"));
    if (cgats) {
      return Cgats.read(text.lines());
    }
    RawTable written = RawTable.written(text);
    RawTable table =
        TurnedTable.isOne(written) ? TurnedTable.of(written) : written.withDistinctColumns();
    if (table.columns().size() < FEWEST_COLUMNS) {
      throw new TableFaultException(new TableFault.NoTable());
    }
    return new ReadingFile(table, ReadingHeads.guess(table, ReadingLight.D65));
  }

  /** Whether a mapping reads reflectances from columns whose heads name no wavelengths. */
  public boolean needsWavelengths(ReadingMapping mapping) {
    return mapping.isSpectral() && ReadingColumns.named(table, mapping).length == 0;
  }

  /**
   * Whether the amounts a mapping reads are loads, of which 1 is the paint's masstone coat, and not
   * in a unit of the painter's own.
   */
  public boolean hasLoads(ReadingMapping mapping) {
    return mapping
        .place(ReadingField.AMOUNT)
        .map(place -> table.columns().get(place).toLowerCase(Locale.ROOT).startsWith("load"))
        .orElse(false);
  }

  /** What its rows say under a mapping; a row that cannot be used is told, not dropped. */
  public ReadingPlan plan(ReadingMapping mapping) {
    ReadingColumns columns;
    try {
      columns = ReadingColumns.of(table, mapping);
    } catch (TableFaultException broken) {
      return new ReadingPlan(List.of(), List.of(), Optional.of(broken.fault()));
    }
    List<ReadRow> rows = new ArrayList<>();
    for (DelimitedText.Row row : table.rows()) {
      String said = mapping.place(ReadingField.NAME).map(row.cells()::get).orElse("");
      String name = said.isBlank() ? Integer.toString(rows.size() + 1) : said;
      try {
        rows.add(
            new ReadRow(
                row.line(),
                name,
                Optional.of(columns.reading(row)),
                Optional.empty(),
                columns.amount(row)));
      } catch (TableFaultException broken) {
        rows.add(
            new ReadRow(
                row.line(),
                name,
                Optional.empty(),
                Optional.of(broken.fault()),
                OptionalDouble.empty()));
      }
    }
    return new ReadingPlan(rows, columns.wavelengths(), Optional.empty());
  }
}
