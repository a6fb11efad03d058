package org.panwright.swatch.grid;

/** What is made of a cell. */
public enum CellVerdict {
  /** It agrees with the rest. */
  AGREES,
  /** It looks like the cell that {@link JudgedCell#partner} names, and that one like it. */
  EXCHANGED,
  /** It agrees neither with its label nor with another cell's: another paint, or a dirty brush. */
  DISAGREES
}
