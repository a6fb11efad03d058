package org.panwright.app.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Box;
import org.panwright.kit.Filling;
import org.panwright.kit.History;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;
import org.panwright.paint.Paint;
import org.panwright.words.CompareWords;
import org.panwright.words.EditWords;

/** Which two lineups stand side by side, and their judgement; made off the JavaFX thread. */
public final class CompareModel {
  /** How many earlier states of the lineup looked at are offered. */
  private static final int STEPS_BACK = 12;

  private final Session session;
  private final Judge judge;
  private final Consumer<RuntimeException> failures;
  private final Latest<Compared> comparing;
  private final ObjectProperty<Optional<Side>> first = new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Side>> second =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<Outing>> outing =
      new SimpleObjectProperty<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Compared>> compared =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private boolean settled = true;
  private boolean following;

  /**
   * @param judge judges both sides
   * @param away where they are judged
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public CompareModel(
      Session session,
      Judge judge,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.judge = judge;
    this.failures = failures;
    comparing = new Latest<>(away, home);
    session.historyProperty().addListener(changed -> follow());
    session.lineupProperty().addListener(changed -> follow());
    first.addListener(changed -> refresh());
    second.addListener(changed -> refresh());
    outing.addListener(changed -> refresh());
    outing.set(session.kit().outings().stream().filter(o -> !o.subjects().isEmpty()).findFirst());
    follow();
  }

  ObjectProperty<Optional<Side>> firstProperty() {
    return first;
  }

  ObjectProperty<Optional<Side>> secondProperty() {
    return second;
  }

  ObjectProperty<Optional<Outing>> outingProperty() {
    return outing;
  }

  ReadOnlyObjectProperty<Optional<Compared>> comparedProperty() {
    return compared.getReadOnlyProperty();
  }

  Session session() {
    return session;
  }

  /** Whether what is shown is what was asked for last. */
  public boolean isSettled() {
    return settled;
  }

  /** All lineups of the kit, then the lineup looked at as it was before each of the last edits. */
  List<Side> choices() {
    List<Side> choices = new ArrayList<>();
    for (Lineup lineup : session.kit().lineups()) {
      choices.add(new Side(lineup.name(), lineup));
    }
    session.lineup().ifPresent(lineup -> choices.addAll(earlier(lineup.id())));
    return choices;
  }

  private List<Side> earlier(String lineupId) {
    List<Side> earlier = new ArrayList<>();
    List<History.Step> past = session.historyProperty().get().past();
    Optional<Lineup> later = session.kit().lineup(lineupId);
    for (int i = past.size() - 1; i >= 0 && earlier.size() < STEPS_BACK; i--) {
      History.Step step = past.get(i);
      Optional<Lineup> then = step.kit().lineup(lineupId);
      boolean differs =
          then.isPresent()
              && !then.map(Lineup::fillings).equals(later.map(Lineup::fillings))
              && fits(session.kit(), then.get());
      if (differs) {
        String label =
            CompareWords.before(then.get().name(), EditWords.of(step.edit(), step.kit()));
        earlier.add(new Side(label, then.get()));
        later = then;
      }
    }
    return earlier;
  }

  /** Whether the kit still has the box, wells and paints of a lineup. */
  private static boolean fits(Kit kit, Lineup lineup) {
    Optional<Box> box = kit.box(lineup.boxId());
    return box.isPresent()
        && lineup.fillings().keySet().stream().allMatch(well -> box.get().find(well).isPresent())
        && lineup.fillings().values().stream()
            .allMatch(filling -> kit.shelf().find(filling.paintId()).isPresent());
  }

  /** Puts the first lineup with one paint exchanged on the second side. */
  void exchange(Paint out, Paint in) {
    first
        .get()
        .ifPresent(
            side -> {
              Lineup lineup = side.lineup();
              var fillings = new java.util.LinkedHashMap<>(lineup.fillings());
              fillings.replaceAll(
                  (well, filling) ->
                      filling.paintId().equals(out.id())
                          ? new Filling(in.id(), filling.fill())
                          : filling);
              second.set(
                  Optional.of(
                      new Side(
                          CompareWords.exchanged(side.label(), out.name(), in.name()),
                          lineup.withFillings(fillings))));
            });
  }

  /** The paints of the first side. */
  List<Paint> paintsOfFirst() {
    Kit kit = session.kit();
    return first.get().stream()
        .filter(side -> fits(kit, side.lineup()))
        .flatMap(side -> side.lineup().paintIds(kit.boxOf(side.lineup())).stream())
        .flatMap(id -> kit.shelf().find(id).stream())
        .toList();
  }

  /** The paints of the shelf that are not on the first side. */
  List<Paint> paintsBesideFirst() {
    List<Paint> inside = paintsOfFirst();
    return session.kit().shelf().paints().stream().filter(p -> !inside.contains(p)).toList();
  }

  /** Changes the sides. */
  void turnRound() {
    Optional<Side> was = first.get();
    first.set(second.get());
    second.set(was);
  }

  /** Keeps both sides to what the kit holds now. */
  private void follow() {
    following = true;
    Kit kit = session.kit();
    first.set(first.get().flatMap(side -> now(kit, side)).or(() -> looked()));
    second.set(second.get().flatMap(side -> now(kit, side)).or(() -> other()));
    outing.set(outing.get().flatMap(o -> kit.outing(o.id())));
    following = false;
    refresh();
  }

  /** The side as the kit has it now: a lineup as it is moves on, one as it was stays. */
  private Optional<Side> now(Kit kit, Side side) {
    Optional<Lineup> same = kit.lineup(side.lineup().id());
    if (same.isPresent() && side.label().equals(same.get().name())) {
      return same.map(lineup -> new Side(lineup.name(), lineup));
    }
    return same.isPresent() && fits(kit, side.lineup()) ? Optional.of(side) : Optional.empty();
  }

  private Optional<Side> looked() {
    return session
        .lineup()
        .flatMap(lineup -> session.kit().lineup(lineup.id()))
        .map(lineup -> new Side(lineup.name(), lineup));
  }

  private Optional<Side> other() {
    return choices().stream().filter(side -> !Optional.of(side).equals(first.get())).findFirst();
  }

  private void refresh() {
    if (following) {
      return;
    }
    Kit kit = session.kit();
    Optional<Side> one = first.get().filter(side -> fits(kit, side.lineup()));
    Optional<Side> two = second.get().filter(side -> fits(kit, side.lineup()));
    if (one.isEmpty() || two.isEmpty()) {
      comparing.cancel();
      settled = true;
      compared.set(Optional.empty());
      return;
    }
    List<SubjectColour> subjects = outing.get().map(Outing::subjects).orElse(List.of());
    settled = false;
    comparing.request(
        outdated -> {
          Judgement ofFirst = judged(kit, one.get().lineup(), outdated);
          Judgement ofSecond = judged(kit, two.get().lineup(), outdated);
          return Compared.of(one.get(), two.get(), ofFirst, ofSecond, subjects, outdated);
        },
        done -> {
          settled = true;
          compared.set(Optional.of(done));
        },
        failures);
  }

  private Judgement judged(Kit kit, Lineup lineup, java.util.function.BooleanSupplier outdated) {
    return judge.judge(kit.replacing(lineup), lineup.id(), outdated);
  }
}
