package org.panwright.kit.table;

/** What becomes of a row whose paint, by name and pigments, is on the shelf already. */
public enum Duplicates {
  /** The shelf's paint stays as it is. */
  KEEP_MINE,
  /** The shelf's paint takes over maker, ownership, handling and note; its colours stay. */
  TAKE_OVER,
  /** The row becomes a paint of its own. */
  ADD_AGAIN
}
