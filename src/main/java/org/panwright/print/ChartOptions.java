package org.panwright.print;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What the painter chooses about a mixing chart.
 *
 * @param shape which pairs it holds and how they are painted
 * @param cellMm side of a cell, 8..60; if empty, the largest up to 20 that brings the chart on one
 *     sheet, or 12 if none does
 * @param paper what it is printed on
 * @param hints whether each cell bears a small dot of the predicted colour
 */
public record ChartOptions(Shape shape, OptionalDouble cellMm, PaperFormat paper, boolean hints) {
  /** Which pairs a chart holds and how they are painted. */
  public enum Shape {
    /** Every pair twice, in equal parts. */
    SQUARE,
    /** Every pair once, in equal parts. */
    TRIANGLE,
    /** Every pair twice: in each cell the paint of its row leads. */
    LEANING,
    /** Every pair twice: strong above the diagonal, washed out below it. */
    WASHED
  }

  /** The smallest cell that can be painted. */
  public static final double LEAST_CELL_MM = 8;

  /** The largest cell. */
  public static final double LARGEST_CELL_MM = 60;

  /** A square chart that fits A4, without dots. */
  public static final ChartOptions USUAL =
      new ChartOptions(Shape.SQUARE, OptionalDouble.empty(), PaperFormat.A4, false);

  public ChartOptions {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(paper, "paper");
    cellMm.ifPresent(
        mm -> {
          if (!(mm >= LEAST_CELL_MM && mm <= LARGEST_CELL_MM)) {
            throw new IllegalArgumentException("a cell measures 8..60 mm, was " + mm);
          }
        });
  }
}
