package org.panwright.app.papers;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.CardOptions;
import org.panwright.print.KeyCard;
import org.panwright.print.PdfWriter;
import org.panwright.store.FileProblemException;
import org.panwright.store.SafeFile;

/** The key card of the lineup looked at, as the options want it; laid out off the JavaFX thread. */
public final class CardModel {
  private final Session session;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<KeyCard> layout;
  private final ObjectProperty<CardOptions> options = new SimpleObjectProperty<>(CardOptions.USUAL);
  private final ReadOnlyObjectWrapper<Optional<KeyCard>> card =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private boolean settled;

  /**
   * @param today the date printed on the card
   * @param away where the card is laid out and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public CardModel(
      Session session,
      PigmentLibrary library,
      Supplier<LocalDate> today,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.library = library;
    this.today = today;
    this.away = away;
    this.home = home;
    this.failures = failures;
    layout = new Latest<>(away, home);
    session.lineupProperty().addListener(changed -> refresh());
    session.historyProperty().addListener(changed -> refresh());
    options.addListener(changed -> refresh());
    refresh();
  }

  /** What the painter chose about the card. */
  ObjectProperty<CardOptions> optionsProperty() {
    return options;
  }

  /** The newest whole card; empty while the kit has no lineup. */
  public ReadOnlyObjectProperty<Optional<KeyCard>> cardProperty() {
    return card.getReadOnlyProperty();
  }

  /** Whether the card shown is the newest one asked for. */
  public boolean isSettled() {
    return settled;
  }

  /** Whether there is a lineup to make a card for. */
  boolean hasLineup() {
    return session.lineup().isPresent();
  }

  /** A name for the file of the card. */
  String fileName() {
    return session.lineup().map(Lineup::name).orElse("");
  }

  /** Writes the card shown as a PDF. */
  void savePdf(Path file, Runnable done, Consumer<FileProblem> failed) {
    card.get()
        .ifPresent(
            shown ->
                away.execute(
                    () -> {
                      try {
                        new SafeFile().write(file, PdfWriter.write(shown.papers()));
                        home.execute(done);
                      } catch (FileProblemException problem) {
                        home.execute(() -> failed.accept(problem.problem()));
                      } catch (RuntimeException fault) {
                        home.execute(() -> failures.accept(fault));
                      }
                    }));
  }

  private void refresh() {
    Optional<Lineup> lineup = session.lineup();
    if (lineup.isEmpty()) {
      layout.cancel();
      settled = true;
      card.set(Optional.empty());
      return;
    }
    Kit kit = session.kit();
    CardOptions wanted = options.get();
    LocalDate date = today.get();
    settled = false;
    layout.request(
        outdated -> KeyCard.of(kit, lineup.get().id(), library, wanted, date),
        made -> {
          settled = true;
          card.set(Optional.of(made));
        },
        failures);
  }
}
