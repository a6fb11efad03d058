package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Paint;
import org.panwright.print.ChartOptions.Shape;

/** The papers to paint by hand or to cut out: mixing charts, swatch ladders, pan labels. */
class HandPaintedPapersTest {
  private static final Kit TWELVE = CardKits.kit(CardKits.rows(2, 6, 124, 66));

  /** Common practice: n paints make n × n cells in a square, n (n + 1) / 2 in a triangle. */
  @ParameterizedTest(name = "{0}: {1} cells")
  @CsvSource({"SQUARE,144", "TRIANGLE,78", "LEANING,144", "WASHED,144"})
  void aChartHasACellForEachPair(Shape shape, int cells) {
    Papers papers = chart(TWELVE, shape, OptionalDouble.empty(), PaperFormat.A4, true);

    assertThat(papers.sheets()).hasSize(1);
    assertThat(rectangles(papers)).hasSize(cells);
    assertThat(swatches(papers)).hasSize(cells);
    SheetChecks.check(papers);
  }

  @Test
  void cellsStandAsFarApartAsAsked() {
    List<Mark.Rectangle> cells =
        rectangles(chart(TWELVE, Shape.SQUARE, OptionalDouble.of(11), PaperFormat.A4, false));

    assertThat(cells.get(1).area().xMm() - cells.get(0).area().xMm()).isEqualTo(11, offset(1e-9));
    assertThat(cells.get(12).area().yMm() - cells.get(0).area().yMm()).isEqualTo(11, offset(1e-9));
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(PaperFormat.class)
  void aChartTooLargeForItsPaperGoesOn(PaperFormat paper) {
    Papers papers = chart(TWELVE, Shape.SQUARE, OptionalDouble.of(60), paper, true);

    assertThat(papers.sheets()).hasSizeGreaterThan(1);
    assertThat(rectangles(papers)).hasSize(144);
    SheetChecks.check(papers);
  }

  @Test
  void sheetsOfATriangleWithoutCellsAreLeftOut() {
    int square =
        chart(TWELVE, Shape.SQUARE, OptionalDouble.of(40), PaperFormat.A4, false).sheets().size();
    int triangle =
        chart(TWELVE, Shape.TRIANGLE, OptionalDouble.of(40), PaperFormat.A4, false).sheets().size();

    assertThat(triangle).isLessThan(square);
  }

  @Test
  void halvesDifferByWash() {
    List<Mark.Swatch> dots =
        swatches(chart(TWELVE, Shape.WASHED, OptionalDouble.empty(), PaperFormat.A4, true));

    double strong = light(dots.get(4));
    double washed = light(dots.get(4 * 12));
    assertThat(washed).isGreaterThan(strong + 0.1);
  }

  @Test
  void halvesLeanToTheirRow() {
    List<Mark.Swatch> dots =
        swatches(chart(TWELVE, Shape.LEANING, OptionalDouble.empty(), PaperFormat.A4, true));

    double leaningYellow = dots.get(4).run().get(0).blue();
    double leaningBlue = dots.get(4 * 12).run().get(0).blue();
    assertThat(leaningBlue).isGreaterThan(leaningYellow);
  }

  @Test
  void cellsOutsideTheRangeAreRefused() {
    assertThatThrownBy(
            () -> new ChartOptions(Shape.SQUARE, OptionalDouble.of(2), PaperFormat.A4, false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a cell measures 8..300 mm, was 2.0");
  }

  @Test
  void aLadderHasSevenFieldsForEachPaint() {
    Papers papers = SwatchLadder.of(TWELVE, CardKits.LINEUP, PaperFormat.A4);

    assertThat(rectangles(papers)).hasSize(12 * 7);
    assertThat(rectangles(papers).get(0).area().heightMm()).isGreaterThanOrEqualTo(10);
    assertThat(rectangles(papers).get(0).area().widthMm()).isGreaterThanOrEqualTo(15);
    SheetChecks.check(papers);
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(PaperFormat.class)
  void everyPaperTakesNastyNames(PaperFormat paper) {
    Kit nasty = nasty();

    SheetChecks.check(chart(nasty, Shape.SQUARE, OptionalDouble.empty(), paper, true));
    SheetChecks.check(chart(nasty, Shape.TRIANGLE, OptionalDouble.of(8), paper, false));
    SheetChecks.check(SwatchLadder.of(nasty, CardKits.LINEUP, paper));
    SheetChecks.check(labels(nasty, LabelOptions.USUAL.withPaper(paper)));
  }

  @Test
  void oneOfTheTwoPlacesMayBeChosen() {
    List<Mark.Rectangle> sides =
        rectangles(labels(TWELVE, LabelOptions.USUAL.withPlaces(LabelOptions.Places.SIDE)));
    List<Mark.Rectangle> bases =
        rectangles(labels(TWELVE, LabelOptions.USUAL.withPlaces(LabelOptions.Places.BASE)));

    assertThat(sides).hasSize(12).allMatch(label -> label.area().heightMm() == 8);
    assertThat(bases).hasSize(12).allMatch(label -> label.area().heightMm() == 13);
  }

  /** Common practice: a slip of 17 × 13 mm goes under a half pan. */
  @Test
  void labelsHaveTheSizeOfTheirPans() {
    Papers papers = labels(TWELVE, LabelOptions.USUAL);

    assertThat(rectangles(papers)).hasSize(24);
    assertThat(rectangles(papers).get(0).area().widthMm()).isEqualTo(17, offset(1e-9));
    assertThat(rectangles(papers).get(0).area().heightMm()).isEqualTo(8, offset(1e-9));
    assertThat(rectangles(papers).get(1).area().widthMm()).isEqualTo(17, offset(1e-9));
    assertThat(rectangles(papers).get(1).area().heightMm()).isEqualTo(13, offset(1e-9));
    assertThat(texts(papers)).contains("ultramarine blue", "PB29");
    SheetChecks.check(papers);
  }

  @Test
  void dabsGetNoLabel() {
    Papers papers = labels(CardKits.kit(CardKits.twelveWithDabs()), LabelOptions.USUAL);

    assertThat(rectangles(papers)).hasSize(24);
  }

  private static Kit nasty() {
    List<Well> wells = new ArrayList<>();
    List<Paint> paints = new ArrayList<>();
    String[] names = {
      "ultramarine ".repeat(25),
      "群青".repeat(150),
      "quinacridone".repeat(25),
      "é\uD83C\uDFA8",
      "כחול ים (עמוק)"
    };
    for (int i = 0; i < 10; i++) {
      String label = i == 3 ? "the place beside the hinge" : String.valueOf(i + 1);
      WellKind kind = i % 2 == 0 ? WellKind.PAN : WellKind.HALF_PAN;
      wells.add(new Well("w" + i, label, kind, 2 + 30 * (i % 5), 2 + 30 * (i / 5), 28, 19));
      paints.add(
          CardKits.paint("p" + i, names[i % names.length], "PB29", "PY150", "PBr24", "PR101"));
    }
    return CardKits.kit(new Box("box", "box", 160, 60, 160, 60, wells), paints, "x".repeat(300));
  }

  private static Papers labels(Kit kit, LabelOptions options) {
    return PanLabels.of(kit, CardKits.LINEUP, options).papers().orElseThrow();
  }

  private static Papers chart(
      Kit kit, Shape shape, OptionalDouble cellMm, PaperFormat paper, boolean hints) {
    return MixingChart.of(
        kit, CardKits.LINEUP, CardKits.LIBRARY, new ChartOptions(shape, cellMm, paper, hints));
  }

  private static double light(Mark.Swatch dot) {
    return dot.run().get(0).toXyzD65().y();
  }

  private static List<Mark.Rectangle> rectangles(Papers papers) {
    return marks(papers, Mark.Rectangle.class);
  }

  private static List<Mark.Swatch> swatches(Papers papers) {
    return marks(papers, Mark.Swatch.class);
  }

  private static List<String> texts(Papers papers) {
    return marks(papers, Mark.Text.class).stream().map(Mark.Text::text).toList();
  }

  private static <T extends Mark> List<T> marks(Papers papers, Class<T> kind) {
    return papers.sheets().stream()
        .flatMap(sheet -> sheet.singleMarks().stream())
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }
}
