package org.panwright.app.papers;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.Bundle;
import org.panwright.print.Made;
import org.panwright.print.Occasion;
import org.panwright.print.PaperKind;
import org.panwright.print.PaperOrder;
import org.panwright.print.Papers;
import org.panwright.print.PdfWriter;
import org.panwright.store.FileProblemException;
import org.panwright.store.SafeFile;
import org.panwright.words.PaperWords;

/**
 * The papers of a lineup or an outing: one order for each kind, the one looked at made off the
 * JavaFX thread, those ticked saved together.
 */
public final class PapersModel {
  private final Session session;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Made> making;
  private final Map<PaperKind, PaperOrder> orders = new EnumMap<>(PaperKind.class);
  private final Set<PaperKind> ticked = EnumSet.noneOf(PaperKind.class);
  private final PaperMemory memory;
  private final ObjectProperty<PaperKind> kind = new SimpleObjectProperty<>(PaperKind.KEY_CARD);
  private final ObjectProperty<Optional<String>> outing =
      new SimpleObjectProperty<>(Optional.empty());
  private final BooleanProperty grey = new SimpleBooleanProperty();
  private final ReadOnlyObjectWrapper<Optional<Made>> made =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private boolean settled;

  /**
   * @param memory what was chosen about papers before
   * @param today the date printed on the papers
   * @param away where papers are made and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public PapersModel(
      Session session,
      PigmentLibrary library,
      PaperMemory memory,
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
    making = new Latest<>(away, home);
    this.memory = memory;
    memory.orders().forEach(order -> orders.put(order.kind(), order));
    Stream.of(PaperKind.values()).filter(memory::isTicked).forEach(ticked::add);
    grey.set(memory.isGrey());
    session.lineupProperty().addListener(changed -> refresh());
    session.historyProperty().addListener(changed -> refresh());
    kind.addListener(changed -> refresh());
    outing.addListener(changed -> refresh());
    grey.addListener(
        changed -> {
          remember();
          refresh();
        });
    refresh();
  }

  /** The kind looked at. */
  ObjectProperty<PaperKind> kindProperty() {
    return kind;
  }

  /** The id of the outing the papers are for; empty for the lineup looked at. */
  ObjectProperty<Optional<String>> outingProperty() {
    return outing;
  }

  /** Whether papers are made for a printer without colour. */
  BooleanProperty greyProperty() {
    return grey;
  }

  /** The newest whole result of the order looked at; empty while the kit has no lineup. */
  public ReadOnlyObjectProperty<Optional<Made>> madeProperty() {
    return made.getReadOnlyProperty();
  }

  /** Whether what is shown is the newest asked for. */
  public boolean isSettled() {
    return settled;
  }

  /** The order of a kind. */
  PaperOrder order(PaperKind of) {
    return Objects.requireNonNull(orders.get(of));
  }

  /** Changes the order of its kind. */
  void change(PaperOrder changed) {
    if (changed.equals(orders.put(changed.kind(), changed))) {
      return;
    }
    remember();
    if (changed.kind() == kind.get()) {
      refresh();
    }
  }

  /** Whether a kind is among those saved together. */
  boolean isTicked(PaperKind of) {
    return ticked.contains(of);
  }

  /** Puts a kind among those saved together, or takes it away. */
  void tick(PaperKind of, boolean among) {
    if (among) {
      ticked.add(of);
    } else {
      ticked.remove(of);
    }
    remember();
  }

  /** The outings of the kit that take a lineup along. */
  List<Outing> outings() {
    return session.kit().outings().stream().filter(o -> o.lineupId().isPresent()).toList();
  }

  /** The lineups of the kit. */
  List<Lineup> lineups() {
    return session.kit().lineups();
  }

  /** What the papers are made of now; empty if there is no lineup. */
  Optional<Occasion> occasion() {
    Kit kit = session.kit();
    Optional<Outing> chosen = outing.get().flatMap(kit::outing);
    Optional<String> lineup =
        chosen.flatMap(Outing::lineupId).or(() -> session.lineup().map(Lineup::id));
    return lineup.map(id -> new Occasion(kit, id, chosen, library, today.get()));
  }

  /** A name for the file of the order looked at, or of all papers. */
  String fileName(boolean all) {
    String what = all ? PaperWords.ALL : PaperWords.name(kind.get().name());
    return occasion().map(o -> what + ", " + (all ? o.name() : o.lineup().name())).orElse(what);
  }

  /** Writes the papers shown as a PDF. */
  void save(Path file, Runnable done, Consumer<FileProblem> failed) {
    made.get()
        .flatMap(Made::papers)
        .ifPresent(papers -> write(file, () -> Bundle.of(papers), done, failed));
  }

  /**
   * Makes all papers ticked and writes them as one PDF.
   *
   * @param nothing called instead if there is nothing to print on any of them
   */
  void saveAll(Path file, Runnable done, Runnable nothing, Consumer<FileProblem> failed) {
    Optional<Occasion> occasion = occasion();
    List<PaperOrder> wanted = ticked.stream().map(orders::get).toList();
    boolean inGrey = grey.get();
    if (occasion.isEmpty()) {
      nothing.run();
      return;
    }
    away.execute(
        () -> {
          try {
            List<Papers> all =
                wanted.stream()
                    .flatMap(order -> made(order, occasion.get(), inGrey).papers().stream())
                    .toList();
            if (all.isEmpty()) {
              home.execute(nothing);
            } else {
              String title = PaperWords.all(occasion.get().name());
              write(file, () -> new Bundle(title, all), done, failed);
            }
          } catch (RuntimeException fault) {
            home.execute(() -> failures.accept(fault));
          }
        });
  }

  private void write(
      Path file, Supplier<Bundle> bundle, Runnable done, Consumer<FileProblem> failed) {
    away.execute(
        () -> {
          try {
            new SafeFile().write(file, PdfWriter.write(bundle.get()));
            home.execute(done);
          } catch (FileProblemException problem) {
            home.execute(() -> failed.accept(problem.problem()));
          } catch (RuntimeException fault) {
            home.execute(() -> failures.accept(fault));
          }
        });
  }

  private static Made made(PaperOrder order, Occasion occasion, boolean inGrey) {
    Made made = Made.of(order, occasion);
    return inGrey ? new Made(made.papers().map(Papers::inGrey), made.notes()) : made;
  }

  /** Changes the kit. */
  void perform(Edit edit) {
    session.perform(edit);
  }

  /** Work away from the JavaFX thread, where papers are made. */
  <R> Latest<R> latest() {
    return new Latest<>(away, home);
  }

  /** Told of faults of the program. */
  Consumer<RuntimeException> failures() {
    return failures;
  }

  private void remember() {
    memory.keep(orders, ticked, grey.get());
  }

  private void refresh() {
    Optional<Occasion> occasion = occasion();
    if (occasion.isEmpty()) {
      making.cancel();
      settled = true;
      made.set(Optional.empty());
      return;
    }
    PaperOrder order = order(kind.get());
    boolean inGrey = grey.get();
    settled = false;
    making.request(
        outdated -> made(order, occasion.get(), inGrey),
        result -> {
          settled = true;
          made.set(Optional.of(result));
        },
        failures);
  }
}
