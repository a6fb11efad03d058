package org.panwright.swatch.file;

import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.table.TableFault;

/**
 * One sample of a file of readings.
 *
 * @param line where it begins in its file, from 1; where the file has a column for each sample, the
 *     number of its column
 * @param name the sample's name, or its number where it has none
 * @param reading what was read; empty if the row cannot be used
 * @param fault why it cannot be used, if so
 * @param amount how much paint lies there, 0 or more in the file's unit; empty if the file does not
 *     say
 */
public record ReadRow(
    int line,
    String name,
    Optional<Reading> reading,
    Optional<TableFault> fault,
    OptionalDouble amount) {}
