package org.panwright.print;

/**
 * The sizes of type in the cells of one card: the same in all of them, chosen for the usual cell.
 *
 * @param labelPt the well's label
 * @param namePt the paint's name
 * @param notePt codes, marks and fill
 */
record CellType(double labelPt, double namePt, double notePt) {
  /** What is still legible. */
  static final CellType SMALLEST = new CellType(6, 5.25, TextFit.LEGIBLE_PT);

  /** The sizes for cells of a width in millimetres. */
  static CellType forWidth(double widthMm) {
    double name = Math.min(10, Math.max(5.5, 2.2 + 0.25 * widthMm));
    return new CellType(Math.max(6, name * 1.1), name, Math.max(TextFit.LEGIBLE_PT, name * 0.84));
  }

  /** The same with names no larger than {@code pt}. */
  CellType withNamePt(double pt) {
    return new CellType(labelPt, Math.max(TextFit.LEGIBLE_PT, Math.min(namePt, pt)), notePt);
  }
}
