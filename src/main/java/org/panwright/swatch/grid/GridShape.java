package org.panwright.swatch.grid;

/** What the cells of a hand-painted chart hold. */
public enum GridShape {
  /** Row and column paint in equal strength, every pair twice. */
  SQUARE,
  /** Row and column paint in equal strength, every pair once: the lower left half. */
  LOWER_TRIANGLE,
  /** The same in the upper right half. */
  UPPER_TRIANGLE,
  /** The row's paint leads, about three parts of strength to one of the column's. */
  ROW_LEADS,
  /** The column's paint leads in the same way. */
  COLUMN_LEADS,
  /** Equal strength: thick on and above the diagonal, thin below it. */
  THICK_AND_THIN,
  /** One paint alone in each cell, in reading order. */
  ONE_EACH;

  /** Whether only one half of the square is painted. */
  boolean leavesBare(int row, int column) {
    return (this == LOWER_TRIANGLE && column > row) || (this == UPPER_TRIANGLE && column < row);
  }
}
