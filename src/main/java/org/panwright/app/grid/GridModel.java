package org.panwright.app.grid;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.paint.Wash;

/** What the mix grid shows and which cell is picked; knows no control. */
public final class GridModel {
  private final Session session;
  private final Latest<GridPicture> painting;
  private final Consumer<RuntimeException> failures;
  private final ObjectProperty<Reading> reading = new SimpleObjectProperty<>(Reading.LEANING);
  private final ObjectProperty<Wash> wash = new SimpleObjectProperty<>(Wash.CREAM);
  private final ReadOnlyObjectWrapper<GridPicture> picture =
      new ReadOnlyObjectWrapper<>(GridPicture.EMPTY);
  private boolean isPainting;

  /**
   * @param away where pictures are prepared
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public GridModel(
      Session session, Executor away, Executor home, Consumer<RuntimeException> failures) {
    this.session = session;
    this.failures = failures;
    painting = new Latest<>(away, home);
    session.judgementProperty().addListener(o -> refresh());
    session.previewProperty().addListener(o -> refresh());
    reading.addListener(o -> refresh());
    wash.addListener(o -> refresh());
    refresh();
  }

  /** Whether the newest judgement is shown. */
  public boolean isSettled() {
    return !isPainting;
  }

  /** How the halves are read. */
  public ObjectProperty<Reading> readingProperty() {
    return reading;
  }

  /** The wash of the leaning reading. */
  public ObjectProperty<Wash> washProperty() {
    return wash;
  }

  ReadOnlyObjectProperty<GridPicture> pictureProperty() {
    return picture.getReadOnlyProperty();
  }

  GridPicture picture() {
    return picture.get();
  }

  ObjectProperty<Selection> selectionProperty() {
    return session.selectionProperty();
  }

  /** Picks the mix of a cell. */
  void pick(int row, int column) {
    GridPicture shown = picture.get();
    if (row < 0 || column < 0 || row >= shown.size() || column >= shown.size()) {
      return;
    }
    session
        .selectionProperty()
        .set(
            new Selection.OfMix(
                shown.heads().get(row).paintId(),
                shown.heads().get(column).paintId(),
                shown.cell(row, column).ratio()));
  }

  /**
   * Picks the cell {@code down} rows and {@code right} columns from the picked one, within the
   * grid.
   */
  void step(int down, int right) {
    GridPicture shown = picture.get();
    if (shown.size() == 0) {
      return;
    }
    Optional<int[]> at = picked();
    if (at.isEmpty()) {
      pick(0, 0);
      return;
    }
    int last = shown.size() - 1;
    pick(
        Math.min(last, Math.max(0, at.get()[0] + down)),
        Math.min(last, Math.max(0, at.get()[1] + right)));
  }

  /** Row and column of the picked cell. */
  Optional<int[]> picked() {
    if (session.selectionProperty().get() instanceof Selection.OfMix mix) {
      int row = picture.get().rowOf(mix.rowPaintId());
      int column = picture.get().rowOf(mix.columnPaintId());
      if (row >= 0 && column >= 0) {
        return Optional.of(new int[] {row, column});
      }
    }
    return Optional.empty();
  }

  private void refresh() {
    Optional<Judgement> trial = session.previewProperty().get();
    Optional<Judgement> shown = trial.or(() -> session.judgementProperty().get());
    if (shown.isEmpty()) {
      painting.cancel();
      painted(GridPicture.EMPTY);
      return;
    }
    Judgement judgement = shown.get();
    Set<String> standing = session.lineup().map(GridPicture::paintsIn).orElse(Set.of());
    Reading asRead = reading.get();
    Wash asWashed = wash.get();
    isPainting = true;
    painting.request(
        outdated -> GridPicture.of(judgement, standing, trial.isPresent(), asRead, asWashed),
        this::painted,
        failure -> {
          isPainting = false;
          failures.accept(failure);
        });
  }

  private void painted(GridPicture painted) {
    isPainting = false;
    picture.set(painted);
  }
}
