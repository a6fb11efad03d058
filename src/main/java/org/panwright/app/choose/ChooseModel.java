package org.panwright.app.choose;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.analysis.Arranger;
import org.panwright.analysis.Choice;
import org.panwright.analysis.Chooser;
import org.panwright.analysis.Conditions;
import org.panwright.analysis.Judgement;
import org.panwright.analysis.Proposal;
import org.panwright.analysis.WellOrder;
import org.panwright.app.Session;
import org.panwright.app.fx.FreshId;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.WellKind;
import org.panwright.paint.Ownership;
import org.panwright.words.ChooseWords;

/** Conditions, the search that follows them, and what it proposes; knows no control. */
public final class ChooseModel {
  /** Most paints in pans that can be asked for. */
  static final int MOST_WELLS = 48;

  /** Most paints as dabs that can be asked for. */
  static final int MOST_DABS = Conditions.MOST - MOST_WELLS;

  private static final int USUAL_WELLS = 12;

  private final Session session;
  private final Chooser chooser;
  private final Arranger arranger;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Choice> choosing;
  private final ObjectProperty<Conditions> conditions = new SimpleObjectProperty<>();
  private final Map<String, Wish> wishes = new HashMap<>();
  private final ReadOnlyObjectWrapper<Optional<Chosen>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Chooser.Progress>> progress =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();

  /** A choice with the kit and the box it was made for. */
  record Chosen(Kit kit, Choice choice) {}

  /**
   * @param away where lineups are sought, a thread of its own
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public ChooseModel(
      Session session,
      Chooser chooser,
      Arranger arranger,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.chooser = chooser;
    this.arranger = arranger;
    this.home = home;
    this.failures = failures;
    choosing = new Latest<>(away, home);
    conditions.set(usual());
    session.historyProperty().addListener(changed -> forgetTheGone());
  }

  /** As many paints as the box has places, or as are owned if these are fewer. */
  private Conditions usual() {
    int owned =
        (int)
            session.kit().shelf().paints().stream()
                .filter(paint -> paint.ownership() == Ownership.OWNED)
                .count();
    int wells = Math.min(MOST_WELLS, Math.min(owned, wells(false, USUAL_WELLS)));
    return Conditions.of(wells, Math.min(MOST_DABS, Math.min(owned - wells, wells(true, 0))));
  }

  private int wells(boolean dabs, int otherwise) {
    return session
        .lineup()
        .map(
            lineup ->
                (int)
                    session.kit().boxOf(lineup).wells().stream()
                        .filter(well -> dabs == (well.kind() == WellKind.DAB))
                        .count())
        .orElse(otherwise);
  }

  Session session() {
    return session;
  }

  /** Everything asked but for the wishes on single paints. */
  ObjectProperty<Conditions> conditionsProperty() {
    return conditions;
  }

  ReadOnlyObjectProperty<Optional<Chosen>> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<Chooser.Progress>> progressProperty() {
    return progress.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty runningProperty() {
    return running.getReadOnlyProperty();
  }

  /** Whether nothing is being sought. */
  public boolean isSettled() {
    return !running.get();
  }

  Wish wish(String paintId) {
    return wishes.getOrDefault(paintId, Wish.FREE);
  }

  void wish(String paintId, Wish wish) {
    wishes.put(paintId, wish);
  }

  /** Whether a paint sits in the lineup looked at, so that it can stay where it is. */
  boolean sits(String paintId) {
    return session
        .lineup()
        .filter(
            lineup ->
                lineup.fillings().values().stream().anyMatch(f -> f.paintId().equals(paintId)))
        .isPresent();
  }

  /**
   * Seeks lineups under the conditions the view starts with, if the shelf has any paint for them.
   */
  public void proposeAtFirst() {
    if (conditions.get().places() > 0) {
      propose();
    }
  }

  /** Seeks lineups; what was sought before is given up. */
  void propose() {
    Kit kit = session.kit();
    Conditions wanted =
        conditions
            .get()
            .withMust(paints(Set.of(Wish.MUST, Wish.KEPT)))
            .withNever(paints(Set.of(Wish.NEVER)));
    running.set(true);
    progress.set(Optional.empty());
    choosing.request(
        outdated ->
            chooser.choose(
                kit,
                wanted,
                outdated,
                told ->
                    home.execute(
                        () -> {
                          if (!outdated.getAsBoolean()) {
                            progress.set(Optional.of(told));
                          }
                        })),
        found -> {
          running.set(false);
          chosen.set(Optional.of(new Chosen(kit, found)));
        },
        fault -> {
          running.set(false);
          failures.accept(fault);
        });
  }

  /** Gives up what is being sought; the proposals shown stay. */
  void stop() {
    choosing.cancel();
    running.set(false);
  }

  private Set<String> paints(Set<Wish> wanted) {
    Set<String> paints = new HashSet<>();
    wishes.forEach(
        (paint, wish) -> {
          if (wanted.contains(wish)) {
            paints.add(paint);
          }
        });
    return paints;
  }

  /** The judgement proposals are measured against, if it is of this kit. */
  Optional<Judgement> looked() {
    return session.judgementProperty().get();
  }

  /** Makes a proposal a lineup for the box of the one looked at, laid by hue, and looks at it. */
  boolean make(Proposal proposal, int number) {
    Optional<Lineup> looked = session.lineup();
    if (looked.isEmpty()) {
      return false;
    }
    Kit kit = session.kit();
    Box box = kit.boxOf(looked.get());
    Map<String, Filling> kept = kept(looked.get(), proposal.paints());
    Optional<Map<String, Filling>> fillings =
        Arranger.place(box, proposal.pans(), proposal.dabs(), kept);
    boolean known = proposal.paints().stream().allMatch(id -> kit.shelf().find(id).isPresent());
    if (fillings.isEmpty() || !known) {
      return false;
    }
    String id =
        FreshId.of("lineup", new HashSet<>(kit.lineups().stream().map(Lineup::id).toList()));
    Lineup bare = new Lineup(id, ChooseWords.lineupName(number), box.id(), fillings.get());
    Kit with = new Edit.AddLineup(bare).apply(kit);
    Lineup laid =
        bare.withFillings(
            arranger
                .arrange(
                    with, bare, WellOrder.HUE, kept.keySet(), /* leftHanded= */ false, () -> false)
                .fillings());
    session.perform(new Edit.AddLineup(laid));
    session.look(id);
    return true;
  }

  private Map<String, Filling> kept(Lineup lineup, List<String> paints) {
    Map<String, Filling> kept = new LinkedHashMap<>();
    lineup
        .fillings()
        .forEach(
            (well, filling) -> {
              boolean stays =
                  wish(filling.paintId()) == Wish.KEPT && paints.contains(filling.paintId());
              boolean first =
                  kept.values().stream().noneMatch(f -> f.paintId().equals(filling.paintId()));
              if (stays && first) {
                kept.put(well, filling);
              }
            });
    return kept;
  }

  private void forgetTheGone() {
    wishes.keySet().removeIf(id -> session.kit().shelf().find(id).isEmpty());
  }
}
