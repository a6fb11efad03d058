package org.panwright.app.swatches;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.kept.PaintFitReport;

/**
 * What the paints learn from what lies on the picture now, while it is worked out and after. What
 * was learnt before stays until it is known anew.
 */
public final class Lesson {
  private final Learning learning;
  private final Runnable changed;
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper();
  private Learning.Outcome outcome = Learning.Outcome.NOTHING;
  private Learning.Stage stage = Learning.Stage.DONE;
  private boolean keeping;

  /**
   * @param changed done whenever there is something else to show
   */
  public Lesson(Learning learning, Runnable changed) {
    this.learning = learning;
    this.changed = changed;
  }

  /** What share of it is done, 0..1. */
  public ReadOnlyDoubleProperty shareProperty() {
    return share.getReadOnlyProperty();
  }

  /** How far it has come. */
  public Learning.Stage stage() {
    return stage;
  }

  /** What the paints learn; that of the coats before until it is known anew. */
  public Optional<PaintFitReport> report() {
    return outcome.report();
  }

  /** Why they cannot learn, if so. */
  public Optional<FitRefusal> refusal() {
    return outcome.refusal();
  }

  /** The day noted with what is kept. */
  public LocalDate day() {
    return learning.day();
  }

  /** Says that it is under way, before its coats are known. */
  public void begin() {
    learning.stop();
    share.set(0);
    outcome = new Learning.Outcome(outcome.report(), Optional.empty());
    stage = Learning.Stage.RUNNING;
    changed.run();
  }

  /** Learns from these coats; at once if there are none. */
  public void from(Map<String, List<PaintedCoat>> coats) {
    if (!coats.isEmpty()) {
      begin();
    }
    learning.from(
        coats,
        share::set,
        found -> {
          outcome = found;
          stage = Learning.Stage.DONE;
          changed.run();
        });
  }

  /** Stops working; whoever asks for this begins anew at once. */
  public void pause() {
    learning.stop();
  }

  /** Leaves off what is under way. */
  public void leaveOff() {
    learning.stop();
    if (stage == Learning.Stage.RUNNING) {
      stage = Learning.Stage.LEFT_OFF;
      changed.run();
    }
  }

  /** Forgets all that was learnt; tells nobody. */
  public void forget() {
    outcome = Learning.Outcome.NOTHING;
  }

  /** There is nothing to learn from. */
  public void end() {
    from(Map.of());
  }

  /** Whether something was learnt and nothing is under way. */
  public boolean canKeep() {
    return outcome.report().isPresent() && stage == Learning.Stage.DONE;
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  public void keep(Map<String, List<PaintedCoat>> coats, String source) {
    keeping = true;
    try {
      learning.keep(coats, outcome.report().orElseThrow(), source);
    } finally {
      keeping = false;
    }
  }

  /**
   * Whether the kit changes only because this is being kept. All it was learnt from is then in the
   * kit, so learning anew would find the same.
   */
  public boolean isBeingKept() {
    return keeping;
  }
}
