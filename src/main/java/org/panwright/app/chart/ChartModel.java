package org.panwright.app.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.app.swatches.Corners;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PictureModel;
import org.panwright.app.swatches.Readout;
import org.panwright.app.swatches.ShownPicture;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.grid.CellReading;
import org.panwright.swatch.grid.GridCoats;
import org.panwright.swatch.grid.GridReading;
import org.panwright.swatch.grid.JudgedCell;
import org.panwright.swatch.grid.PaintedGrid;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.words.ChartReadingWords;

/**
 * A hand-painted chart on the picture: its cells beside what they foretell of each other, and what
 * the paints learn from those that are kept. Nothing is read before the corners are put in place.
 * Reading, comparing and fitting run away from the JavaFX thread; the newest request wins.
 */
public final class ChartModel {
  private static final double UNKNOWN = -1;

  private final Session session;
  private final PictureModel pictures;
  private final Learning learning;
  private final Consumer<RuntimeException> failures;
  private final Latest<Readout<GridReading>> reading;
  private final Comparing comparing;
  private final Corners corners = new Corners();
  private final ReadOnlyObjectWrapper<ChartPlan> plan;
  private final ReadOnlyObjectWrapper<ChartState> state =
      new ReadOnlyObjectWrapper<>(ChartState.NONE);
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(UNKNOWN);
  private final CellCursor cursor = new CellCursor(state::get);
  private final CellWishes wishes = new CellWishes();
  private boolean chosen;
  private boolean untouched = true;

  /**
   * @param learning what the paints learn
   * @param away where charts are read and compared
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public ChartModel(
      Session session,
      PictureModel pictures,
      PigmentLibrary library,
      Learning learning,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.pictures = pictures;
    this.learning = learning;
    this.failures = failures;
    reading = new Latest<>(away, home);
    comparing = new Comparing(library, away, home);
    plan = new ReadOnlyObjectWrapper<>(ChartPlan.of(session.kit(), session.lineup()));
    pictures.pictureProperty().addListener((property, before, now) -> now.ifPresent(this::layOn));
    corners.placesProperty().addListener(changed -> refresh());
    corners.whenPointedAt(this::pickAt);
    cursor.pickedProperty().addListener(changed -> outline());
    session.lineupProperty().addListener(changed -> followLineup());
    session.whenPaintsOrPaperChange(this::follow);
  }

  /** What the painter says the chart holds. */
  ReadOnlyObjectProperty<ChartPlan> planProperty() {
    return plan.getReadOnlyProperty();
  }

  /** What is known of the chart. */
  ReadOnlyObjectProperty<ChartState> stateProperty() {
    return state.getReadOnlyProperty();
  }

  /** What share of the work under way is done, 0..1; below 0 where nobody can say. */
  ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  /** Which cell is looked at. */
  CellCursor cursor() {
    return cursor;
  }

  /** The outer corners of the chart. */
  public Corners corners() {
    return corners;
  }

  /** The kit's paints, to choose from. */
  List<Paint> paints() {
    return session.kit().shelf().paints();
  }

  /** A paint's name. */
  String name(String paintId) {
    return session.kit().shelf().find(paintId).map(Paint::name).orElse("");
  }

  /** Says whether a chart is what is looked for on the picture. */
  void setChosen(boolean now) {
    chosen = now;
    refresh();
  }

  /** Says what the chart holds; what was said of single cells counts no more. */
  void setPlan(ChartPlan changed) {
    untouched = false;
    change(changed);
  }

  private void change(ChartPlan changed) {
    if (!changed.equals(plan.get())) {
      wishes.clear();
      plan.set(changed);
      refresh();
    }
  }

  /** Says whether the paints are to learn from the cell looked at. */
  void keepPicked(boolean kept) {
    cursor
        .picked()
        .filter(cell -> !cell.isBeyondPicture())
        .ifPresent(
            cell -> {
              wishes.keep(cell.reading(), kept);
              List<ChartCell> cells = new ArrayList<>(state.get().cells());
              cells.set(
                  cursor.pickedProperty().get(),
                  new ChartCell(cell.reading(), cell.judged(), kept));
              state.set(state.get().withCells(cells));
            });
  }

  /** Takes the cell looked at and its partner to hold what the other was meant to. */
  void exchangePicked() {
    List<ChartCell> cells = state.get().cells();
    cursor
        .picked()
        .filter(cell -> cell.partner().isPresent())
        .ifPresent(
            cell -> {
              CellReading other = cells.get(cell.partner().getAsInt()).reading();
              wishes.exchange(cell.reading(), other);
              refresh();
            });
  }

  /** Exchanges the labels that look exchanged. */
  void exchangeLabels() {
    state.get().labels().ifPresent(labels -> setPlan(plan.get().withExchanged(labels)));
  }

  /** Whether there are cells to keep and nothing is under way. */
  boolean canKeep() {
    return state.get().work() == ChartState.Work.NOTHING && !coats().isEmpty();
  }

  /**
   * Fits the paints to the kept cells and all coats they had, then keeps both as one edit.
   *
   * @param done told how many cells and paints it were
   */
  void keep(Runnable done) {
    if (!canKeep()) {
      return;
    }
    Map<String, List<PaintedCoat>> coats = coats();
    share.set(0);
    state.set(state.get().withRefusal(Optional.empty()).working(ChartState.Work.LEARNING));
    learning.from(
        coats,
        share::set,
        found -> {
          state.set(state.get().withRefusal(found.refusal()).working(ChartState.Work.NOTHING));
          found
              .report()
              .ifPresent(
                  report -> {
                    learning.keep(coats, report, source());
                    done.run();
                  });
        });
  }

  /** Leaves off what is under way; the cells stay as they are and nothing is kept. */
  void leaveOff() {
    switch (state.get().work()) {
      case LEARNING -> {
        learning.stop();
        state.set(state.get().working(ChartState.Work.NOTHING));
      }
      case READING, COMPARING -> {
        reading.cancel();
        comparing.stop();
        state.set(state.get().working(ChartState.Work.LEFT_OFF));
      }
      default -> {}
    }
  }

  /** Reads and compares the cells, after leaving off. */
  void takeUp() {
    if (state.get().work() == ChartState.Work.LEFT_OFF) {
      refresh();
    }
  }

  /** The cells that would be kept, as coats of their paints. */
  Map<String, List<PaintedCoat>> coats() {
    List<JudgedCell> kept =
        state.get().cells().stream()
            .filter(ChartCell::kept)
            .flatMap(cell -> cell.judged().stream())
            .toList();
    return GridCoats.of(kept, plan.get().shape(), learning.day(), source());
  }

  /** Whether what is shown is of the picture, the corners and the kit as they are now. */
  public boolean isSettled() {
    return state.get().work() == ChartState.Work.NOTHING
        || state.get().work() == ChartState.Work.LEFT_OFF;
  }

  private String source() {
    return ChartReadingWords.source(pictures.name());
  }

  private void layOn(ShownPicture shown) {
    wishes.clear();
    corners.layOn(shown.picture());
  }

  /** Until the painter says otherwise, the chart is one of the lineup looked at. */
  private void followLineup() {
    if (untouched) {
      change(ChartPlan.of(session.kit(), session.lineup()));
    }
  }

  private void follow() {
    ChartPlan within = plan.get().within(session.kit());
    if (within.equals(plan.get())) {
      refresh();
    } else {
      change(within);
    }
  }

  private void refresh() {
    comparing.stop();
    learning.stop();
    Optional<ShownPicture> shown = pictures.pictureProperty().get();
    Optional<PaintedGrid> grid = plan.get().grid();
    boolean ready = chosen && shown.isPresent() && corners.arePlaced() && grid.isPresent();
    if (!ready) {
      reading.cancel();
      show(ChartState.NONE);
      return;
    }
    outline();
    Picture picture = shown.get().picture();
    List<Point> four = corners.placesProperty().get();
    Lab paper = Light.D65.lab(session.kit().paper().reflectance());
    share.set(UNKNOWN);
    state.set(state.get().working(ChartState.Work.READING));
    reading.request(
        outdated -> Readout.of(() -> GridReading.of(picture, four, grid.get(), paper, List.of())),
        this::take,
        this::fail);
  }

  private void take(Readout<GridReading> outcome) {
    outcome
        .found()
        .map(wishes::applyTo)
        .ifPresentOrElse(this::compare, () -> show(ChartStates.unread(outcome.fault())));
  }

  private void compare(GridReading reading) {
    share.set(0);
    show(ChartStates.read(reading, state.get(), wishes));
    comparing.compare(
        reading,
        session.kit(),
        share::set,
        found -> show(ChartStates.compared(reading, found.judgement(), found.refusal(), wishes)),
        this::fail);
  }

  private void show(ChartState next) {
    Optional<CellReading> at = cursor.picked().map(ChartCell::reading);
    cursor.leave();
    state.set(next);
    at.ifPresent(cell -> cursor.pick(cell.row(), cell.column()));
    outline();
  }

  private void fail(RuntimeException fault) {
    state.set(state.get().working(ChartState.Work.NOTHING));
    failures.accept(fault);
  }

  private void outline() {
    Optional<PaintedGrid> grid = plan.get().grid();
    corners.outline(
        grid.map(g -> ChartOutlines.of(g, corners.placesProperty().get(), cursor.picked()))
            .orElse(List.of()));
  }

  private void pickAt(Point place) {
    plan.get()
        .grid()
        .flatMap(grid -> ChartOutlines.inChart(grid, corners.placesProperty().get(), place))
        .ifPresent(at -> cursor.pick((int) Math.floor(at.y()), (int) Math.floor(at.x())));
  }
}
