package org.panwright.swatch.file;

import java.util.List;
import java.util.Optional;
import org.panwright.swatch.table.TableFault;

/**
 * What a file of readings says under one mapping; nothing is kept yet.
 *
 * @param rows in the file's order; none if the columns are at fault
 * @param wavelengths the wavelengths read in nanometres; empty if a colour is read
 * @param fault why the columns cannot be used, if so
 */
public record ReadingPlan(
    List<ReadRow> rows, List<Double> wavelengths, Optional<TableFault> fault) {
  public ReadingPlan {
    rows = List.copyOf(rows);
    wavelengths = List.copyOf(wavelengths);
  }

  /** The rows that can be used. */
  public List<ReadRow> usable() {
    return rows.stream().filter(row -> row.reading().isPresent()).toList();
  }
}
