package org.panwright.kit;

/**
 * The size of a sheet to paint on.
 *
 * @param widthMm 20..3000
 * @param heightMm 20..3000
 */
public record SheetSize(double widthMm, double heightMm) {
  /** ISO 216 A5, the usual sketch-book page. */
  public static final SheetSize A5 = new SheetSize(148, 210);

  private static final double LEAST_MM = 20;
  private static final double MOST_MM = 3000;

  public SheetSize {
    if (!(widthMm >= LEAST_MM
        && widthMm <= MOST_MM
        && heightMm >= LEAST_MM
        && heightMm <= MOST_MM)) {
      throw new IllegalArgumentException(
          "a sheet measures 20..3000 mm, was %s x %s".formatted(widthMm, heightMm));
    }
  }

  /** Its area in sheets of A5: 1 for A5, 4 for A3. */
  public double inA5() {
    return widthMm * heightMm / (A5.widthMm * A5.heightMm);
  }

  /** The shorter of its sides. */
  public double shorterMm() {
    return Math.min(widthMm, heightMm);
  }
}
