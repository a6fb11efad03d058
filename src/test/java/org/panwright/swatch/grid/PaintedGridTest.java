package org.panwright.swatch.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.mixing.TintLoad;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.Shelf;
import org.panwright.paint.WashStrengths;
import org.panwright.print.ChartOptions;
import org.panwright.print.MixingChart;
import org.panwright.print.PaperFormat;
import org.panwright.print.Papers;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.PaintLoad;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.InventedShelf;
import org.panwright.swatch.sheet.PaintedPage;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingFaultException;
import org.panwright.swatch.sheet.SimulatedCamera;

/**
 * A printed mixing chart, painted with mixes of known paints, photographed and judged. The mistakes
 * put in are the ones that must come out.
 */
class PaintedGridTest {
  private static final List<String> PAINTS =
      List.of("yellow", "orange red", "rose", "blue", "green", "earth");
  private static final Lab PAPER = Light.D65.lab(PaintedPage.PAPER);
  private static final SimulatedCamera CAMERA = SimulatedCamera.phone(1300, 1700);

  @TempDir Path folder;

  @Test
  void aRightlyPaintedChartAgrees() throws Exception {
    GridJudgement judgement = judge(truth(), PAINTS);

    assertThat(judgement.cells()).hasSize(36);
    assertThat(told(judgement, CellVerdict.EXCHANGED, CellVerdict.DISAGREES)).isEmpty();
    assertThat(judgement.exchangedLabels()).isEmpty();
    assertThat(median(judgement)).isLessThan(2);
  }

  @Test
  void exchangedAndDirtyCellsAreFound() throws Exception {
    Map<List<Integer>, List<PaintLoad>> cells = truth();
    List<PaintLoad> green = cells.get(List.of(0, 3));
    cells.put(List.of(0, 3), cells.get(List.of(2, 5)));
    cells.put(List.of(2, 5), green);
    List<PaintLoad> dirty = new ArrayList<>(cells.get(List.of(1, 0)));
    dirty.add(new PaintLoad("blue", 0.12));
    cells.put(List.of(1, 0), dirty);

    GridJudgement judgement = judge(cells, PAINTS);

    assertThat(told(judgement, CellVerdict.EXCHANGED, CellVerdict.DISAGREES)).hasSize(3);
    JudgedCell first = cell(judgement, 0, 3);
    assertThat(first.verdict()).isEqualTo(CellVerdict.EXCHANGED);
    assertThat(judgement.cells().get(first.partner().orElseThrow()))
        .isEqualTo(cell(judgement, 2, 5));
    assertThat(cell(judgement, 1, 0).verdict()).isEqualTo(CellVerdict.DISAGREES);
    assertThat(judgement.cells().stream().filter(c -> c.verdict() == CellVerdict.AGREES))
        .hasSize(33);
    assertThat(GridCoats.of(judgement, GridShape.SQUARE, java.time.LocalDate.EPOCH, "").values())
        .flatExtracting(coats -> coats)
        .hasSizeLessThanOrEqualTo(33);
  }

  @Test
  void exchangedRowLabelsAreFound() throws Exception {
    List<String> labelled = List.of("yellow", "blue", "rose", "orange red", "green", "earth");
    PaintedGrid grid = new PaintedGrid(GridShape.SQUARE, labelled, PAINTS, 6);

    GridJudgement judgement =
        GridJudgement.of(
            read(truth(), grid), estimates(), Paper.WHITE, WashStrengths.USUAL, () -> false);

    assertThat(judgement.exchangedLabels())
        .hasValueSatisfying(
            labels -> {
              assertThat(labels.rows()).isTrue();
              assertThat(List.of(labels.first(), labels.second())).containsExactly(1, 3);
              assertThat(labels.after()).isLessThan(labels.before());
            });
  }

  @Test
  void aChartPaintedToTheEdgeOfADarkTableHasNoBarePaper() throws Exception {
    Path file = CAMERA.save(page(truth()), folder.resolve("chart.jpg"));
    Picture picture = PictureFile.read(file, share -> {}, () -> false);
    List<Point> table =
        List.of(new Point(5, 5), new Point(60, 5), new Point(60, 60), new Point(5, 60));

    assertThatThrownBy(
            () ->
                GridReading.of(
                    picture,
                    table,
                    PaintedGrid.ofPairs(GridShape.SQUARE, List.of("yellow", "blue")),
                    PAPER,
                    List.of()))
        .isInstanceOf(ReadingFaultException.class)
        .extracting(thrown -> ((ReadingFaultException) thrown).fault())
        .isIn(new ReadingFault.NoBarePaper(), new ReadingFault.NothingPainted());
  }

  private GridJudgement judge(Map<List<Integer>, List<PaintLoad>> cells, List<String> labels)
      throws Exception {
    GridReading reading = read(cells, PaintedGrid.ofPairs(GridShape.SQUARE, labels));
    return GridJudgement.of(reading, estimates(), Paper.WHITE, WashStrengths.USUAL, () -> false);
  }

  private GridReading read(Map<List<Integer>, List<PaintLoad>> cells, PaintedGrid grid)
      throws Exception {
    PaintedPage page = page(cells);
    Path file = CAMERA.save(page, folder.resolve("chart.jpg"));
    Picture picture = PictureFile.read(file, share -> {}, () -> false);
    return GridReading.of(picture, corners(page), grid, PAPER, List.of());
  }

  /** What a painter knows before: the estimates from the pigments' names. */
  private static Map<String, Optics> estimates() {
    Map<String, Optics> known = new LinkedHashMap<>();
    for (Paint paint : InventedShelf.paints()) {
      known.put(paint.id(), paint.optics(PigmentLibraryReader.read()));
    }
    return known;
  }

  /** Equal strength by the true optics, a little uneven from cell to cell. */
  private static Map<List<Integer>, List<PaintLoad>> truth() {
    Map<List<Integer>, List<PaintLoad>> cells = new HashMap<>();
    for (int row = 0; row < 6; row++) {
      for (int column = 0; column < 6; column++) {
        double load = 0.25 * (1 + 0.3 * Math.sin(row * 5 + column * 3));
        String a = PAINTS.get(row);
        String b = PAINTS.get(column);
        double ta = TintLoad.of(InventedShelf.OPTICS.get(a), Paper.WHITE);
        double tb = TintLoad.of(InventedShelf.OPTICS.get(b), Paper.WHITE);
        cells.put(
            List.of(row, column),
            row == column
                ? List.of(new PaintLoad(a, load))
                : List.of(
                    new PaintLoad(a, load * ta / (ta + tb)),
                    new PaintLoad(b, load * tb / (ta + tb))));
      }
    }
    return cells;
  }

  private static PaintedPage page(Map<List<Integer>, List<PaintLoad>> cells) {
    Papers papers = papers();
    PaintedPage page = new PaintedPage(papers, 0);
    List<Zone> outlines = PaintedPage.outlines(papers.sheets().get(0));
    cells.forEach((at, paints) -> page.paint(outlines.get(6 * at.get(0) + at.get(1)), paints));
    return page;
  }

  private static Papers papers() {
    List<Well> wells = new ArrayList<>();
    Map<String, Filling> fillings = new LinkedHashMap<>();
    for (int i = 0; i < PAINTS.size(); i++) {
      wells.add(new Well("w" + i, "" + (i + 1), WellKind.HALF_PAN, 3 + 17 * i, 3, 16, 19));
      fillings.put("w" + i, new Filling(PAINTS.get(i), Fill.FULL));
    }
    Box box = new Box("box", "tin", 110, 30, 110, 30, wells);
    Kit kit =
        Kit.empty("invented")
            .withShelf(new Shelf(InventedShelf.paints()))
            .withBoxes(List.of(box), List.of(new Lineup("l", "six", "box", fillings)));
    return MixingChart.of(
        kit,
        "l",
        PigmentLibraryReader.read(),
        new ChartOptions(ChartOptions.Shape.SQUARE, OptionalDouble.empty(), PaperFormat.A4, false));
  }

  /** Where the chart's corners come to lie: the camera's own knowledge. */
  private static List<Point> corners(PaintedPage page) {
    List<Zone> outlines = PaintedPage.outlines(papers().sheets().get(0));
    Zone first = outlines.get(0);
    Zone last = outlines.get(35);
    Homography camera = CAMERA.place(page);
    Zone whole =
        new Zone(first.x(), first.y(), last.right() - first.x(), last.bottom() - first.y());
    return camera.map(whole);
  }

  /** Cells of these verdicts, in short. */
  private static List<String> told(GridJudgement judgement, CellVerdict... verdicts) {
    return judgement.cells().stream()
        .filter(c -> List.of(verdicts).contains(c.verdict()))
        .map(
            c ->
                "%d/%d %s %.1f"
                    .formatted(c.cell().row(), c.cell().column(), c.verdict(), c.distance()))
        .toList();
  }

  private static JudgedCell cell(GridJudgement judgement, int row, int column) {
    Optional<JudgedCell> found =
        judgement.cells().stream()
            .filter(c -> c.cell().row() == row && c.cell().column() == column)
            .findFirst();
    return found.orElseThrow();
  }

  private static double median(GridJudgement judgement) {
    double[] sorted =
        judgement.cells().stream().mapToDouble(JudgedCell::distance).sorted().toArray();
    return sorted[sorted.length / 2];
  }
}
