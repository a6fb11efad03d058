package org.panwright.app.papers;

import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.panwright.print.ChartOptions;
import org.panwright.words.PaperViewWords;

/** What can be chosen about a mixing chart. */
final class ChartFields extends OrderFields<ChartOptions> {
  private static final int AS_FITS = 0;
  private static final Integer[] SIDES_MM =
      IntStream.of(AS_FITS, 8, 10, 12, 15, 18, 20, 25, 30, 40, 50, 60, 80, 100, 120)
          .boxed()
          .toArray(Integer[]::new);

  ChartFields(ChartOptions order, PapersModel model) {
    super(ChartOptions.class, order, model);
    choice(
        PaperViewWords.SHAPE,
        ChartOptions.Shape.values(),
        shape -> PaperViewWords.chartShape(shape.name()),
        ChartOptions::shape,
        ChartOptions::withShape);
    choice(
        PaperViewWords.CELL,
        SIDES_MM,
        PaperViewWords::cell,
        chart -> (int) chart.cellMm().orElse(AS_FITS),
        (chart, mm) ->
            chart.withCellMm(mm == AS_FITS ? OptionalDouble.empty() : OptionalDouble.of(mm)));
    tick(PaperViewWords.DOTS, ChartOptions::hints, ChartOptions::withHints);
  }
}
