package org.panwright.kit;

/** What the painter says of one paint when a lineup is to be proposed. */
public enum PaintWish {
  /** In or out, as is best. */
  FREE,
  MUST,
  /** It must be in, in the well where it sits now. */
  KEPT,
  NEVER
}
