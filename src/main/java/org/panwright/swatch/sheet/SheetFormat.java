package org.panwright.swatch.sheet;

/** Papers a swatch sheet is printed on, upright, in millimetres (ISO 216 and North American). */
public enum SheetFormat {
  A4(210, 297),
  A5(148, 210),
  LETTER(215.9, 279.4);

  private final double widthMm;
  private final double heightMm;

  SheetFormat(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  /** The short side. */
  public double widthMm() {
    return widthMm;
  }

  /** The long side. */
  public double heightMm() {
    return heightMm;
  }
}
