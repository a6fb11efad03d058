package org.panwright.print;

import java.util.List;

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

  /** What printers of a country take: Letter in North America and the Philippines, else A4. */
  public static PaperFormat usualIn(String countryCode) {
    return List.of("US", "CA", "MX", "PH").contains(countryCode) ? LETTER : A4;
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
