package org.panwright.app.choose;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.arrange.WellOrder;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Chooser;
import org.panwright.analysis.choose.Conditions;
import org.panwright.analysis.choose.Proposal;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.Session;
import org.panwright.app.fx.FreshId;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.Outing;
import org.panwright.kit.PaintWish;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.WellKind;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseWords;

/** Conditions, the search that follows them, and what it proposes; knows no control. */
public final class ChooseModel {
  /** Most paints in pans that can be asked for. */
  static final int MOST_WELLS = 48;

  /** Most paints as dabs that can be asked for. */
  static final int MOST_DABS = LineupWishes.MOST - MOST_WELLS;

  private static final int USUAL_WELLS = 12;

  private final Session session;
  private final Chooser chooser;
  private final Arranger arranger;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Choice> choosing;
  private final ReadOnlyObjectWrapper<LineupWishes> wishes = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Optional<Chosen>> chosen =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<Chooser.Progress>> progress =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();

  /** A choice with what it was made from. */
  record Chosen(Kit kit, LineupWishes wishes, Choice choice) {}

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
    session.lineupProperty().addListener(changed -> follow());
    follow();
  }

  /** What is kept with the lineup looked at; the usual as long as nothing is. */
  private void follow() {
    wishes.set(session.lineup().flatMap(Lineup::wishes).orElseGet(this::usual));
  }

  /** As many paints as the box has places, or as are owned if these are fewer. */
  private LineupWishes usual() {
    int owned =
        (int)
            session.kit().shelf().paints().stream()
                .filter(paint -> paint.ownership() == Ownership.OWNED)
                .count();
    int wells = Math.min(MOST_WELLS, Math.min(owned, wells(false, USUAL_WELLS)));
    return LineupWishes.of(wells, Math.min(MOST_DABS, Math.min(owned - wells, wells(true, 0))));
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

  /** What is asked in place of the lineup looked at. */
  ReadOnlyObjectProperty<LineupWishes> wishesProperty() {
    return wishes.getReadOnlyProperty();
  }

  /** Asks something else, which is kept with the lineup looked at. */
  void ask(UnaryOperator<LineupWishes> change) {
    LineupWishes changed = change.apply(wishes.get());
    if (changed.equals(wishes.get())) {
      return;
    }
    Optional<Lineup> looked = session.lineup();
    if (looked.isPresent()) {
      session.perform(new Edit.SetWishes(looked.get().id(), changed));
    } else {
      wishes.set(changed);
    }
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

  /** What can be said of a paint. */
  List<PaintWish> choices(String paintId) {
    return sits(paintId)
        ? List.of(PaintWish.FREE, PaintWish.MUST, PaintWish.KEPT, PaintWish.NEVER)
        : List.of(PaintWish.FREE, PaintWish.MUST, PaintWish.NEVER);
  }

  /** What is said of a paint; one that sits nowhere can only be asked to be in. */
  PaintWish wish(String paintId) {
    PaintWish said = wishes.get().of(paintId);
    return said == PaintWish.KEPT && !sits(paintId) ? PaintWish.MUST : said;
  }

  /** Whether a paint sits in the lineup looked at, so that it can stay where it is. */
  private boolean sits(String paintId) {
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
    if (wishes.get().wells() + wishes.get().dabs() > 0) {
      propose();
    }
  }

  /** Seeks lineups; what was sought before is given up. */
  void propose() {
    Kit kit = session.kit();
    LineupWishes asked = wishes.get();
    Conditions wanted = conditions(kit, asked);
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
          chosen.set(Optional.of(new Chosen(kit, asked, found)));
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

  /** What is asked, as far as it is of things the kit has. */
  private static Conditions conditions(Kit kit, LineupWishes asked) {
    List<SubjectColour> subjects =
        asked.outingId().flatMap(kit::outing).map(Outing::subjects).orElse(List.of());
    return new Conditions(
        asked.wells(),
        asked.dabs(),
        paints(kit, asked, Set.of(PaintWish.MUST, PaintWish.KEPT)),
        paints(kit, asked, Set.of(PaintWish.NEVER)),
        asked.rules(),
        asked.mostOfAGroup(),
        asked.weights(),
        subjects);
  }

  private static Set<String> paints(Kit kit, LineupWishes asked, Set<PaintWish> wanted) {
    return kit.shelf().paints().stream()
        .map(Paint::id)
        .filter(id -> wanted.contains(asked.of(id)))
        .collect(Collectors.toSet());
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
    Lineup bare =
        new Lineup(id, ChooseWords.lineupName(number), box.id(), fillings.get())
            .withWishes(wishes.get());
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
                  wishes.get().of(filling.paintId()) == PaintWish.KEPT
                      && paints.contains(filling.paintId());
              boolean first =
                  kept.values().stream().noneMatch(f -> f.paintId().equals(filling.paintId()));
              if (stays && first) {
                kept.put(well, filling);
              }
            });
    return kept;
  }
}
