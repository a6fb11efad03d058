package org.panwright.print;

/** Papers a printer takes: ISO 216 sizes and the North American ones, upright, in millimetres. */
public enum PaperFormat {
  A3(297, 420),
  A4(210, 297),
  A5(148, 210),
  LETTER(215.9, 279.4),
  LEGAL(215.9, 355.6),
  TABLOID(279.4, 431.8);

  private final double widthMm;
  private final double heightMm;

  PaperFormat(double widthMm, double heightMm) {
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
