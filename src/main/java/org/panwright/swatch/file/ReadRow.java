package org.panwright.swatch.file;

import java.util.Optional;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.table.TableFault;

/**
 * One row of a file of readings.
 *
 * @param line where it begins in its file, from 1
 * @param name the sample's name, or its number where it has none
 * @param reading what was read; empty if the row cannot be used
 * @param fault why it cannot be used, if so
 */
public record ReadRow(
    int line, String name, Optional<Reading> reading, Optional<TableFault> fault) {}
