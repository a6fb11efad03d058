package org.panwright.print;

/** How much a cell says, from all in words down to the well's label. */
enum Detail {
  /** Name, codes, properties in words. */
  WORDS,
  /** Name, codes, properties as marks. */
  MARKS,
  /** Name and codes. */
  NAMES,
  /** Label and swatch. */
  NUMBERS
}
