package org.panwright.swatch.grid;

import org.panwright.swatch.sheet.PatchReading;

/**
 * What is seen in a cell.
 *
 * @param row from 0
 * @param column from 0
 */
public record CellReading(int row, int column, CellContent content, PatchReading patch) {
  /** The same cell meant to hold something else. */
  CellReading holding(CellContent other) {
    return new CellReading(row, column, other, patch);
  }
}
