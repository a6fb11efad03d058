package org.panwright.swatch.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.Film;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.fit.FitWatch;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.picture.Point;
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
  private static final PaintedCharts CHARTS = new PaintedCharts(PAINTS);
  private static final Lab PAPER = Light.D65.lab(PaintedPage.PAPER);
  private static final SimulatedCamera CAMERA = SimulatedCamera.phone(1300, 1700);

  @TempDir Path folder;

  @Test
  void aRightlyPaintedChartAgrees() throws Exception {
    GridJudgement judgement = judge(CHARTS.truth(), PAINTS);

    assertThat(judgement.cells()).hasSize(36);
    assertThat(told(judgement, CellVerdict.EXCHANGED, CellVerdict.DISAGREES)).isEmpty();
    assertThat(judgement.exchangedLabels()).isEmpty();
    assertThat(median(judgement)).isLessThan(2);
  }

  @Test
  void exchangedAndDirtyCellsAreFound() throws Exception {
    Map<List<Integer>, List<PaintLoad>> cells = CHARTS.truth();
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
  }

  /**
   * A cell meant for yellow with blue holds a thin earth. Expected is the mix itself, by the optics
   * the chart was painted with and as thick as the middle one of all cells (0.25); a coat chosen to
   * come near the thin earth would be far paler. The optics are learnt from colours alone, so the
   * tolerance is that of mixes foretold from colours (our judgement, no published figure).
   */
  @Test
  void aWrongCellIsForetoldAsThickAsTheOthers() throws Exception {
    Map<List<Integer>, List<PaintLoad>> cells = CHARTS.truth();
    List<PaintLoad> meant = cells.get(List.of(0, 3));
    double laid = meant.stream().mapToDouble(PaintLoad::load).sum();
    List<PaintLoad> usual =
        meant.stream().map(p -> new PaintLoad(p.paint(), p.load() * 0.25 / laid)).toList();
    cells.put(List.of(0, 3), List.of(new PaintLoad("earth", 0.05)));

    JudgedCell wrong = cell(judge(cells, PAINTS), 0, 3);

    assertThat(wrong.verdict()).isEqualTo(CellVerdict.DISAGREES);
    Film film = Film.NONE;
    for (PaintLoad paint : usual) {
      film = film.plus(InventedShelf.OPTICS.get(paint.paint()), paint.load());
    }
    Lab right = Light.D65.lab(film.dry(Paper.WHITE));
    assertThat(Difference.ciede2000(wrong.predicted(), right)).isLessThan(6);
    assertThat(wrong.predicted().l()).isCloseTo(right.l(), within(8.0));
    assertThat(wrong.distance())
        .isEqualTo(Difference.ciede2000(wrong.predicted(), wrong.cell().patch().lab()));
  }

  @Test
  void cellsTakenAsExchangedHoldWhatTheOtherWasMeantTo() throws Exception {
    GridReading reading =
        read(CHARTS.truth(), PaintedGrid.ofPairs(GridShape.SQUARE, PAINTS)).withExchanged(1, 20);

    GridReading right = reading.withExchanged(1, 20);

    CellReading first = reading.cells().get(1);
    assertThat(first.content()).isEqualTo(right.cells().get(20).content());
    assertThat(first.patch()).isEqualTo(right.cells().get(1).patch());
    assertThat(right.cells().get(1).content().second()).contains("orange red");
  }

  @Test
  void theLeadingPaintAndTheHalfPaintedAreThoseOfTheShape() {
    List<String> two = List.of("yellow", "blue");
    PaintedGrid columns = PaintedGrid.ofPairs(GridShape.COLUMN_LEADS, two);
    PaintedGrid lower = PaintedGrid.ofPairs(GridShape.LOWER_TRIANGLE, two);
    PaintedGrid upper = PaintedGrid.ofPairs(GridShape.UPPER_TRIANGLE, two);

    // Three parts of the column's blue to one of the row's yellow.
    assertThat(columns.content(0, 1))
        .hasValueSatisfying(
            content -> {
              assertThat(content.first()).isEqualTo("yellow");
              assertThat(content.firstParts()).isEqualTo(1 / 3.0);
            });
    assertThat(lower.content(0, 1)).isEmpty();
    assertThat(lower.content(1, 0)).isPresent();
    assertThat(upper.content(0, 1)).isPresent();
    assertThat(upper.content(1, 0)).isEmpty();
  }

  @Test
  void exchangedRowLabelsAreFound() throws Exception {
    List<String> labelled = List.of("yellow", "blue", "rose", "orange red", "green", "earth");
    PaintedGrid grid = new PaintedGrid(GridShape.SQUARE, labelled, PAINTS, 6);

    GridJudgement judgement =
        GridJudgement.of(
            read(CHARTS.truth(), grid),
            estimates(),
            Paper.WHITE,
            WashStrengths.USUAL,
            FitWatch.of(() -> false));

    assertThat(judgement.exchangedLabels())
        .hasValueSatisfying(
            labels -> {
              assertThat(labels.where()).isEqualTo(ExchangedLabels.Where.ROWS);
              assertThat(List.of(labels.first(), labels.second())).containsExactly(1, 3);
              assertThat(labels.after()).isLessThan(labels.before());
            });
  }

  @Test
  void aChartPaintedToTheEdgeOfADarkTableHasNoBarePaper() throws Exception {
    Path file = CAMERA.save(CHARTS.page(CHARTS.truth()), folder.resolve("chart.jpg"));
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
    return GridJudgement.of(
        reading, estimates(), Paper.WHITE, WashStrengths.USUAL, FitWatch.of(() -> false));
  }

  private GridReading read(Map<List<Integer>, List<PaintLoad>> cells, PaintedGrid grid)
      throws Exception {
    PaintedPage page = CHARTS.page(cells);
    Path file = CAMERA.save(page, folder.resolve("chart.jpg"));
    Picture picture = PictureFile.read(file, share -> {}, () -> false);
    return GridReading.of(picture, CHARTS.corners(page, CAMERA), grid, PAPER, List.of());
  }

  /** What a painter knows before: the estimates from the pigments' names. */
  private static Map<String, Optics> estimates() {
    Map<String, Optics> known = new LinkedHashMap<>();
    for (Paint paint : InventedShelf.paints()) {
      known.put(paint.id(), paint.optics(PigmentLibraryReader.read()));
    }
    return known;
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
