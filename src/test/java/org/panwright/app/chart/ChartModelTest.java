package org.panwright.app.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Sessions;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.swatch.grid.ExchangedLabels;
import org.panwright.swatch.grid.GridShape;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.ReadingFault;

/** A chart of four known paints with two cells painted in each other's place, in the model. */
class ChartModelTest {
  private static final List<String> PAINTS = HandPainted.PAINTS;

  @TempDir static Path folder;
  private static Path right;
  private static Path exchanged;
  private HandPainted desk;
  private ChartModel chart;

  @BeforeAll
  static void takePhotos() {
    right = HandPainted.save(HandPainted.CHARTS.truth(), folder.resolve("chart.jpg"));
    Map<List<Integer>, List<PaintLoad>> cells = HandPainted.CHARTS.truth();
    List<PaintLoad> green = cells.get(List.of(0, 3));
    cells.put(List.of(0, 3), cells.get(List.of(2, 1)));
    cells.put(List.of(2, 1), green);
    exchanged = HandPainted.save(cells, folder.resolve("exchanged.jpg"));
  }

  @BeforeEach
  void open() {
    desk = new HandPainted();
    chart = desk.chart;
    chart.setChosen(true);
  }

  @Test
  void itHoldsTheLineupInItsOrderAtFirst() {
    assertThat(chart.planProperty().get().rows()).isEqualTo(PAINTS);
    assertThat(chart.planProperty().get().columns()).isEqualTo(PAINTS);
  }

  @Test
  void nothingIsReadBeforeTheCornersAreInPlace() {
    desk.pictures.open(right);
    assertThat(chart.stateProperty().get().cells()).isEmpty();

    desk.placeCorners();

    assertThat(chart.stateProperty().get().cells()).hasSize(PAINTS.size() * PAINTS.size());
    assertThat(chart.stateProperty().get().cells()).allMatch(cell -> cell.predicted().isPresent());
    assertThat(chart.isSettled()).isTrue();
  }

  @Test
  void keptCellsTeachTheirPaintsInOneEditThatTellsWhereItCameFrom() {
    desk.pictures.open(right);
    desk.placeCorners();
    Kit before = desk.session.kit();
    chart.cursor().pick(1, 0);
    chart.keepPicked(false);
    Optional<String> leftOut = chart.cursor().picked().flatMap(c -> c.reading().content().second());

    chart.keep(() -> {});

    Paint rose = paint(PAINTS.get(1));
    assertThat(rose.measured()).isPresent();
    assertThat(rose.swatchbook().origin().orElseThrow().detail())
        .isEqualTo("hand-painted chart chart.jpg");
    assertThat(rose.swatchbook().coats()).isNotEmpty();
    assertThat(rose.swatchbook().coats())
        .flatExtracting(coat -> coat.mixedWith().stream().map(a -> a.paintId()).toList())
        .doesNotContain(leftOut.orElseThrow());
    assertThat(rose.swatchbook().coats())
        .extracting(PaintedCoat::date)
        .containsOnly(Optional.of(HandPainted.DAY));
    desk.session.undo();
    assertThat(desk.session.kit()).isEqualTo(before);
  }

  @Test
  void cancelledLearningKeepsNothingAndMayBeginAnew() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    desk = new HandPainted(Sessions.AT_ONCE, waiting::add);
    chart = desk.chart;
    chart.setChosen(true);
    desk.pictures.open(right);
    desk.placeCorners();
    Kit before = desk.session.kit();
    List<String> told = new ArrayList<>();
    chart.keep(() -> told.add("kept"));
    assertThat(chart.stateProperty().get().work()).isEqualTo(ChartState.Work.LEARNING);
    assertThat(chart.canKeep()).isFalse();

    chart.leaveOff();
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }

    assertThat(told).isEmpty();
    assertThat(desk.session.kit()).isEqualTo(before);
    assertThat(chart.stateProperty().get().work()).isEqualTo(ChartState.Work.NOTHING);
    chart.keep(() -> told.add("kept"));
    waiting.remove().run();
    assertThat(told).containsExactly("kept");
    assertThat(desk.session.kit()).isNotEqualTo(before);
  }

  @Test
  void comparingIsToldInSharesAndMayBeLeftOffAndTakenUp() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    desk = new HandPainted(waiting::add, Sessions.AT_ONCE);
    chart = desk.chart;
    chart.setChosen(true);
    desk.pictures.open(right);
    desk.placeCorners();
    waiting.removeLast().run();
    assertThat(chart.stateProperty().get().work()).isEqualTo(ChartState.Work.COMPARING);

    chart.leaveOff();
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }

    assertThat(chart.stateProperty().get().work()).isEqualTo(ChartState.Work.LEFT_OFF);
    assertThat(chart.isSettled()).isTrue();
    assertThat(chart.canKeep()).isFalse();
    assertThat(chart.stateProperty().get().cells())
        .hasSize(PAINTS.size() * PAINTS.size())
        .allMatch(cell -> cell.predicted().isEmpty());
    List<Double> shares = new ArrayList<>();
    chart.shareProperty().addListener((property, before, now) -> shares.add(now.doubleValue()));
    chart.takeUp();
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
    assertThat(chart.stateProperty().get().cells()).allMatch(cell -> cell.predicted().isPresent());
    assertThat(shares.subList(shares.indexOf(0.0), shares.size()))
        .hasSizeGreaterThan(10)
        .isSorted()
        .allMatch(share -> share >= 0 && share < 1);
  }

  @Test
  void exchangedCellsAreLeftOutUntilTheirLabelsAreSwapped() {
    desk.pictures.open(exchanged);
    desk.placeCorners();
    chart.cursor().pick(0, 3);
    ChartCell cell = chart.cursor().picked().orElseThrow();
    assertThat(cell.verdict()).isEqualTo(CellVerdict.EXCHANGED);
    assertThat(cell.kept()).isFalse();
    ChartCell partner = chart.stateProperty().get().cells().get(cell.partner().orElseThrow());
    assertThat(partner.isAt(2, 1)).isTrue();

    chart.exchangePicked();

    assertThat(chart.stateProperty().get().cells())
        .allMatch(c -> c.verdict() == CellVerdict.AGREES)
        .allMatch(c -> c.kept() || c.isBeyondPicture());
  }

  /** The painter named two paints the wrong way round, for rows and columns alike. */
  @Test
  void namesExchangedForRowsAndColumnsAreFoundAndSetRightAtOnce() {
    desk.pictures.open(right);
    chart.setPlan(
        chart
            .planProperty()
            .get()
            .withExchanged(new ExchangedLabels(ExchangedLabels.Where.BOTH, 0, 2, 0, 0)));
    assertThat(chart.planProperty().get().rows()).isNotEqualTo(PAINTS);
    desk.placeCorners();
    assertThat(chart.stateProperty().get().labels())
        .hasValueSatisfying(
            labels -> {
              assertThat(labels.where()).isEqualTo(ExchangedLabels.Where.BOTH);
              assertThat(List.of(labels.first(), labels.second())).containsExactly(0, 2);
            });

    chart.exchangeLabels();

    assertThat(chart.planProperty().get().rows()).isEqualTo(PAINTS);
    assertThat(chart.planProperty().get().columns()).isEqualTo(PAINTS);
    assertThat(chart.stateProperty().get().labels()).isEmpty();
  }

  @Test
  void rowsThatBearEachOthersLabelAreExchanged() {
    desk.pictures.open(right);
    chart.setPlan(chart.planProperty().get().withExchanged(true, 0, 2));
    desk.placeCorners();
    assertThat(chart.stateProperty().get().labels())
        .hasValueSatisfying(
            labels -> {
              assertThat(labels.where()).isEqualTo(ExchangedLabels.Where.ROWS);
              assertThat(List.of(labels.first(), labels.second())).containsExactly(0, 2);
            });

    chart.exchangeLabels();

    assertThat(chart.planProperty().get().rows()).isEqualTo(PAINTS);
    assertThat(chart.planProperty().get().columns()).isEqualTo(PAINTS);
    assertThat(chart.stateProperty().get().labels()).isEmpty();
  }

  @Test
  void stepsGoFromPaintedCellToPaintedCell() {
    Map<List<Integer>, List<PaintLoad>> cells = HandPainted.CHARTS.truth();
    cells.remove(List.of(0, 1));
    desk.pictures.open(HandPainted.save(cells, folder.resolve("gap.jpg")));
    desk.placeCorners();

    chart.cursor().step(0, 0);
    assertThat(chart.cursor().picked().orElseThrow().isAt(0, 0)).isTrue();
    chart.cursor().step(0, 1);
    assertThat(chart.cursor().picked().orElseThrow().isAt(0, 2)).isTrue();
    chart.cursor().step(-1, 0);
    assertThat(chart.cursor().picked().orElseThrow().isAt(0, 2)).isTrue();
  }

  @Test
  void aHalfThatShouldBeBareButIsPaintedLeavesNoPaperToGoBy() {
    desk.pictures.open(right);
    chart.setPlan(chart.planProperty().get().withShape(GridShape.LOWER_TRIANGLE));
    desk.placeCorners();

    assertThat(chart.stateProperty().get().fault()).contains(new ReadingFault.NoBarePaper());
    assertThat(chart.canKeep()).isFalse();
  }

  @Test
  void aPointOnThePictureLooksAtItsCell() {
    desk.pictures.open(right);
    desk.placeCorners();
    List<Point> corners = chart.corners().placesProperty().get();

    chart.corners().pointAt(corners.get(2).plus(-15, -15));

    assertThat(chart.cursor().picked().orElseThrow().isAt(3, 3)).isTrue();
  }

  @Test
  void aChangedLineupIsFollowedUntilThePainterSaysOtherwise() {
    ChartPlan said = chart.planProperty().get().withCount(true, 3, chart.paints());
    assertThat(said.rows()).isEqualTo(PAINTS.subList(0, 3));

    chart.setPlan(said);
    desk.session.perform(new Edit.EmptyWell("l", "w0"));

    assertThat(chart.planProperty().get()).isEqualTo(said);
  }

  private Paint paint(String id) {
    return desk.session.kit().shelf().find(id).orElseThrow();
  }
}
