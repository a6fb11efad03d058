package org.panwright.app.outing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.analysis.outing.OutingDay;
import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.app.Session;
import org.panwright.app.fx.FreshId;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.OutingWords;

/** The outings of the kit, the one looked at, and what it needs, worked out off the UI thread. */
public final class OutingModel {
  private final Session session;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Consumer<RuntimeException> failures;
  private final Latest<Packed> packing;
  private final ReadOnlyObjectWrapper<List<Outing>> outings =
      new ReadOnlyObjectWrapper<>(List.of());
  private final ReadOnlyObjectWrapper<Optional<Outing>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Packed>> packed =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private boolean settled = true;

  /**
   * @param today the day dates are compared with
   * @param away where needs are worked out
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public OutingModel(
      Session session,
      PigmentLibrary library,
      Supplier<LocalDate> today,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.library = library;
    this.today = today;
    this.failures = failures;
    packing = new Latest<>(away, home);
    session.historyProperty().addListener(changed -> follow());
    follow();
  }

  /** All outings in the order of the kit. */
  ReadOnlyObjectProperty<List<Outing>> outingsProperty() {
    return outings.getReadOnlyProperty();
  }

  /** The outing looked at, as it is in the kit now. */
  ReadOnlyObjectProperty<Optional<Outing>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  /** The newest whole needs of the outing looked at. */
  ReadOnlyObjectProperty<Optional<Packed>> packedProperty() {
    return packed.getReadOnlyProperty();
  }

  /** Whether the needs shown are those of the kit as it is now. */
  public boolean isSettled() {
    return settled;
  }

  /** Looks at an outing. */
  void choose(String id) {
    show(session.kit().outing(id));
  }

  /** The lineups an outing can carry. */
  List<Lineup> lineups() {
    return session.kit().lineups();
  }

  /** Adds an outing with the lineup looked at and the rates of the last outing, and shows it. */
  void add() {
    Kit kit = session.kit();
    PackingRates rates =
        kit.outings().isEmpty()
            ? PackingRates.USUAL
            : kit.outings().get(kit.outings().size() - 1).rates();
    Outing outing =
        new Outing(
                freshId(),
                OutingWords.NEW_NAME + " " + (kit.outings().size() + 1),
                Optional.empty(),
                "",
                session.lineup().map(Lineup::id),
                3,
                3,
                List.of())
            .withRates(rates);
    session.perform(new Edit.AddOuting(outing));
    choose(outing.id());
  }

  /** Adds a copy of the outing looked at, nothing ticked, and shows it. */
  void copy() {
    chosen
        .get()
        .ifPresent(
            was -> {
              Outing copy =
                  new Outing(
                      freshId(),
                      OutingWords.copyOf(was.name()),
                      Optional.empty(),
                      was.place(),
                      was.lineupId(),
                      was.hours(),
                      was.sheets(),
                      was.subjects(),
                      was.sheetSize(),
                      was.rates(),
                      was.checklist()
                          .map(list -> list.stream().map(i -> i.withTicked(false)).toList()),
                      false);
              session.perform(new Edit.AddOuting(copy));
              choose(copy.id());
            });
  }

  /** Removes the outing looked at. */
  void remove() {
    chosen.get().ifPresent(outing -> session.perform(new Edit.RemoveOuting(outing.id())));
  }

  /** Changes the outing looked at; a change that changes nothing is none. */
  void change(UnaryOperator<Outing> change) {
    chosen
        .get()
        .ifPresent(
            was -> {
              Outing now = change.apply(was);
              if (!now.equals(was)) {
                session.perform(new Edit.ChangeOuting(now));
              }
            });
  }

  /** How the date of the outing looked at lies to today. */
  OutingDay day() {
    return OutingDay.of(chosen.get().flatMap(Outing::date), today.get());
  }

  private String freshId() {
    Set<String> taken =
        session.kit().outings().stream().map(Outing::id).collect(Collectors.toSet());
    return FreshId.of("outing", taken);
  }

  private void follow() {
    Kit kit = session.kit();
    outings.set(kit.outings());
    Optional<Outing> still = chosen.get().flatMap(outing -> kit.outing(outing.id()));
    show(still.or(() -> kit.outings().stream().findFirst()));
  }

  private void show(Optional<Outing> outing) {
    chosen.set(outing);
    if (outing.isEmpty()) {
      packing.cancel();
      settled = true;
      packed.set(Optional.empty());
      return;
    }
    Kit kit = session.kit();
    Outing wanted = outing.get();
    settled = false;
    packing.request(
        outdated -> new Packed(kit, wanted, PackingNeeds.of(kit, wanted, library, outdated)),
        found -> {
          settled = true;
          packed.set(Optional.of(found));
        },
        failures);
  }
}
