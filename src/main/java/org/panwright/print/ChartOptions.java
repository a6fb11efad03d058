package org.panwright.print;

import java.util.Objects;
import java.util.OptionalDouble;
import org.panwright.words.PaperWords;

/**
 * What the painter chooses about a mixing chart.
 *
 * @param shape which pairs it holds and how they are painted
 * @param cellMm side of a cell, 8..300; if empty, the largest up to 20 that brings the chart on one
 *     sheet, or 12 if none does
 * @param paper what it is printed on
 * @param hints whether each cell bears a small dot of the predicted colour
 */
public record ChartOptions(Shape shape, OptionalDouble cellMm, PaperFormat paper, boolean hints)
    implements PaperOrder {
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
  public static final double LARGEST_CELL_MM = 300;

  /** A square chart that fits A4, without dots. */
  public static final ChartOptions USUAL =
      new ChartOptions(Shape.SQUARE, OptionalDouble.empty(), PaperFormat.A4, false);

  public ChartOptions {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(paper, "paper");
    cellMm.ifPresent(
        mm -> {
          if (!(mm >= LEAST_CELL_MM && mm <= LARGEST_CELL_MM)) {
            throw new IllegalArgumentException("a cell measures 8..300 mm, was " + mm);
          }
        });
  }

  @Override
  public PaperKind kind() {
    return PaperKind.MIXING_CHART;
  }

  @Override
  public ChartOptions withPaper(PaperFormat changed) {
    return new ChartOptions(shape, cellMm, changed, hints);
  }

  /** The same with another shape. */
  public ChartOptions withShape(Shape changed) {
    return new ChartOptions(changed, cellMm, paper, hints);
  }

  /** The same with cells of another side, or of one that is found. */
  public ChartOptions withCellMm(OptionalDouble changed) {
    return new ChartOptions(shape, changed, paper, hints);
  }

  /** The same with or without dots. */
  public ChartOptions withHints(boolean changed) {
    return new ChartOptions(shape, cellMm, paper, changed);
  }

  @Override
  public Made make(Occasion occasion) {
    if (occasion.paints().isEmpty()) {
      return Made.nothing(PaperWords.NO_PAINTS);
    }
    double largest = MixingChart.largestCellMm(paper);
    if (cellMm.isPresent() && cellMm.getAsDouble() > largest) {
      return Made.nothing(
          PaperWords.cellTooLarge(cellMm.getAsDouble(), PaperWords.format(paper.name()), largest));
    }
    return Made.of(MixingChart.of(occasion.kit(), occasion.lineupId(), occasion.library(), this));
  }
}
