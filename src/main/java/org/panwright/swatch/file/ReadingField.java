package org.panwright.swatch.file;

/** What a column of a file of readings can hold. */
public enum ReadingField {
  /** What the painter called the place that was read. */
  NAME,
  /** The reflectance at one end of the spectrum; all columns to {@link #LAST} follow. */
  FIRST,
  /** The reflectance at the other end of the spectrum. */
  LAST,
  /** L* of CIELAB. */
  LIGHTNESS,
  /** a* of CIELAB. */
  A,
  /** b* of CIELAB. */
  B,
  /** X of CIE XYZ. */
  X,
  /** Y of CIE XYZ. */
  Y,
  /** Z of CIE XYZ. */
  Z,
  /** How much paint lies on the place. */
  AMOUNT
}
