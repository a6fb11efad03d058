package org.panwright.app;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Edit;
import org.panwright.kit.History;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

/**
 * What is open in one window: the kit with its history, the lineup looked at, its newest judgement.
 *
 * <p>The only way to change the kit is {@link #perform}. All members are for the JavaFX thread;
 * judging runs elsewhere and the newest request wins. The old judgement stays until the new one is
 * whole.
 */
public final class Session {
  private final Judge judge;
  private final ReadOnlyObjectWrapper<History> history;
  private final ReadOnlyObjectWrapper<Optional<Lineup>> lineup =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Judgement>> judgement =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Judgement>> preview =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Selection> selection = new SimpleObjectProperty<>(Selection.NOTHING);
  private final Latest<Judgement> judging;
  private final Latest<Judgement> previewing;
  private final Consumer<RuntimeException> failures;

  /**
   * @param judge judges lineups
   * @param away where judging runs; a worker of its own
   * @param home the JavaFX thread
   * @param failures told of faults of the program while judging
   * @param kit the kit to start with
   */
  public Session(
      Judge judge, Executor away, Executor home, Consumer<RuntimeException> failures, Kit kit) {
    this.judge = judge;
    this.failures = failures;
    judging = new Latest<>(away, home);
    previewing = new Latest<>(away, home);
    history = new ReadOnlyObjectWrapper<>(History.startingWith(kit));
    show(kit.lineups().stream().findFirst());
  }

  /** The kit and its past, for undo and redo. */
  public ReadOnlyObjectProperty<History> historyProperty() {
    return history.getReadOnlyProperty();
  }

  /** Calls each time the paints of the shelf or the paper became others, and so what they mix. */
  public void whenPaintsOrPaperChange(Runnable then) {
    history.addListener(
        (property, before, now) -> {
          boolean same =
              before.kit().shelf().equals(now.kit().shelf())
                  && before.kit().paper().equals(now.kit().paper());
          if (!same) {
            then.run();
          }
        });
  }

  /** The kit now. */
  public Kit kit() {
    return history.get().kit();
  }

  /** The lineup looked at, as it is in the kit now; empty if the kit has none. */
  public ReadOnlyObjectProperty<Optional<Lineup>> lineupProperty() {
    return lineup.getReadOnlyProperty();
  }

  /** The lineup looked at; see {@link #lineupProperty}. */
  public Optional<Lineup> lineup() {
    return lineup.get();
  }

  /**
   * The newest whole judgement of the lineup looked at; it may lag behind the kit for some frames.
   */
  public ReadOnlyObjectProperty<Optional<Judgement>> judgementProperty() {
    return judgement.getReadOnlyProperty();
  }

  /** The judgement of the lineup as it would be after the edit being previewed, if any. */
  public ReadOnlyObjectProperty<Optional<Judgement>> previewProperty() {
    return preview.getReadOnlyProperty();
  }

  /** What is picked in any of the views; not part of the history. */
  public ObjectProperty<Selection> selectionProperty() {
    return selection;
  }

  /** Does an edit, and judges anew. */
  public void perform(Edit edit) {
    move(history.get().perform(edit));
  }

  /** Takes the last edit back. */
  public void undo() {
    move(history.get().undo());
  }

  /** Does the last edit taken back again. */
  public void redo() {
    move(history.get().redo());
  }

  /** Leaves the kit for another one, whose history starts here. */
  public void open(Kit kit) {
    history.set(History.startingWith(kit));
    selection.set(Selection.NOTHING);
    show(kit.lineups().stream().findFirst());
  }

  /** Looks at another lineup of the kit. */
  public void look(String lineupId) {
    show(kit().lineup(lineupId));
  }

  /** Shows in {@link #previewProperty} what an edit would bring, until {@link #endPreview}. */
  public void preview(Edit edit) {
    lineup()
        .ifPresent(
            shown -> {
              Kit after = edit.apply(kit());
              previewing.request(
                  outdated -> judge.judge(after, shown.id(), outdated),
                  found -> preview.set(Optional.of(found)),
                  failures);
            });
  }

  /** Ends the preview. */
  public void endPreview() {
    previewing.cancel();
    preview.set(Optional.empty());
  }

  private void move(History changed) {
    endPreview();
    history.set(changed);
    Optional<Lineup> still = lineup().flatMap(l -> kit().lineup(l.id()));
    show(still.or(() -> kit().lineups().stream().findFirst()));
  }

  private void show(Optional<Lineup> shown) {
    lineup.set(shown);
    if (shown.isEmpty()) {
      judging.cancel();
      judgement.set(Optional.empty());
      return;
    }
    Kit kit = kit();
    String id = shown.get().id();
    judging.request(
        outdated -> judge.judge(kit, id, outdated),
        found -> judgement.set(Optional.of(found)),
        failures);
  }
}
