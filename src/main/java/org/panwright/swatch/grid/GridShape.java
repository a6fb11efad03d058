package org.panwright.swatch.grid;

/** What the cells of a hand-painted chart hold. */
public enum GridShape {
  /** Row and column paint in equal strength, every pair twice. */
  SQUARE,
  /** Row and column paint in equal strength, every pair once: the lower left half. */
  TRIANGLE,
  /** The row's paint leads, about three parts of strength to one of the column's. */
  ROW_LEADS,
  /** Equal strength: thick on and above the diagonal, thin below it. */
  THICK_AND_THIN,
  /** One paint alone in each cell, in reading order. */
  ONE_EACH
}
