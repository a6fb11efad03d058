package org.panwright.app.swatches;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Supplier;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Kit;
import org.panwright.kit.SwatchEdit;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitWatch;
import org.panwright.swatch.kept.PaintFit;
import org.panwright.swatch.kept.PaintFitReport;

/**
 * What the paints of the kit learn from coats read off a picture and from all coats kept before.
 * Fitting runs away from the JavaFX thread; the newest request wins.
 */
public final class Learning {
  private final Session session;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Outcome> fitting;

  /** How far it has come. */
  public enum Stage {
    /** What is known is of the coats as they are. */
    DONE,
    RUNNING,
    /** The painter did not want to wait. */
    LEFT_OFF
  }

  /**
   * What came out: one of the two, or neither where there was nothing to learn from.
   *
   * @param report what the paints learn
   * @param refusal why they cannot
   */
  public record Outcome(Optional<PaintFitReport> report, Optional<FitRefusal> refusal) {
    /** Nothing was asked for. */
    public static final Outcome NOTHING = new Outcome(Optional.empty(), Optional.empty());
  }

  /**
   * @param today the day noted with what is kept
   * @param away where paints are fitted
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public Learning(
      Session session,
      PigmentLibrary library,
      Supplier<LocalDate> today,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.library = library;
    this.today = today;
    this.home = home;
    this.failures = failures;
    fitting = new Latest<>(away, home);
  }

  /** The day noted with what is kept. */
  public LocalDate day() {
    return today.get();
  }

  /**
   * Fits the paints of some coats.
   *
   * @param share told now and then what share of it is done, 0..1
   * @param done told what came out; at once if there are no coats
   */
  public void from(
      Map<String, List<PaintedCoat>> coats, DoubleConsumer share, Consumer<Outcome> done) {
    if (coats.isEmpty()) {
      stop();
      done.accept(Outcome.NOTHING);
      return;
    }
    Kit kit = new SwatchEdit.RecordSwatches(coats).apply(session.kit());
    fitting.request(
        outdated -> {
          FitWatch watch = new FitWatch(outdated, Latest.telling(outdated, home, share));
          try {
            return new Outcome(
                Optional.of(PaintFit.of(kit.shelf(), coats.keySet(), library, kit.paper(), watch)),
                Optional.empty());
          } catch (FitRefusedException refused) {
            return new Outcome(Optional.empty(), Optional.of(refused.refusal()));
          }
        },
        done,
        fault -> {
          done.accept(Outcome.NOTHING);
          failures.accept(fault);
        });
  }

  /** Leaves off fitting; nothing is told and nothing kept. */
  public void stop() {
    fitting.cancel();
  }

  /** Keeps the coats with their paints and predicts from what they teach, as one edit. */
  public void keep(Map<String, List<PaintedCoat>> coats, PaintFitReport report, String source) {
    Map<String, Optional<Optics>> optics = new LinkedHashMap<>();
    report.optics().forEach((id, found) -> optics.put(id, Optional.of(found)));
    session.perform(
        new SwatchEdit.LearnPaints(
            new SwatchEdit.RecordSwatches(coats),
            new SwatchEdit.UseOptics(
                optics,
                new OpticsOrigin(Optional.of(today.get()), OpticsOrigin.Reason.FITTED, source))));
  }
}
