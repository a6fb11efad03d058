package org.panwright.kit;

/** What an entry of a check list stands for, where its amount follows from the outing. */
public enum Supply {
  /** The filled box. */
  PAINT_BOX,
  /** Tubes of paints that would run out. */
  REFILL,
  /** Clean water. */
  WATER,
  /** The container that takes the rinse water home. */
  DIRTY_WATER,
  /** Cups to rinse and mix with. */
  CUPS,
  /** Sheets to paint on. */
  PAPER,
  /** Brushes. */
  BRUSHES,
  /** Tissues to wipe brushes with before they are rinsed. */
  WIPES,
  /** Mediums and masking fluid. */
  MEDIUMS
}
