package org.panwright.app.choose;

/** What the painter says of one paint. */
enum Wish {
  FREE,
  MUST,
  /** It must be in, in the well of the lineup looked at where it sits now. */
  KEPT,
  NEVER
}
