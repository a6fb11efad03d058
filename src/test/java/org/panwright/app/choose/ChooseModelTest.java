package org.panwright.app.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.choose.Chooser;
import org.panwright.analysis.choose.Contradiction;
import org.panwright.analysis.choose.Proposal;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Lineup;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.PaintWish;
import org.panwright.paint.PigmentLibrary;

class ChooseModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());

  @Test
  void asksAtFirstForAsManyPaintsAsTheBoxHasWells() {
    ChooseModel model = model(Sessions.AT_ONCE);
    assertThat(model.wishesProperty().get()).isEqualTo(LineupWishes.of(3, 0));
  }

  @Test
  void aProposalBecomesALineupInOneEditAndIsLookedAt() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.propose();
    assertThat(model.make(best(model), 1)).isTrue();

    Lineup made = session.lineup().orElseThrow();
    assertThat(made.name()).isEqualTo("Proposed 1");
    assertThat(made.fillings()).hasSize(3);
    assertThat(session.historyProperty().get().past()).hasSize(1);
    session.undo();
    assertThat(session.kit().lineups()).hasSize(1);
  }

  @Test
  void aPaintThatStaysWhereItIsKeepsItsWell() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.ask(wishes -> wishes.with("blue", PaintWish.KEPT));
    model.propose();
    model.make(best(model), 1);

    assertThat(session.lineup().flatMap(l -> l.in("w2")).map(Filling::paintId))
        .isEqualTo(Optional.of("blue"));
  }

  @Test
  void whatMustNeverBeInIsNotProposed() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.ask(
        wishes ->
            wishes.withPlaces(2, 0).with("red", PaintWish.NEVER).with("yellow", PaintWish.MUST));
    model.propose();

    assertThat(best(model).paints()).containsExactlyInAnyOrder("yellow", "blue");
  }

  @Test
  void moreThanTheShelfHoldsIsToldNotTried() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.ask(wishes -> wishes.withPlaces(4, 0));
    model.propose();

    assertThat(model.chosenProperty().get().orElseThrow().choice().contradictions())
        .containsExactly(new Contradiction.ShelfTooSmall(3, 4));
  }

  @Test
  void stoppingLeavesWhatIsShown() {
    Deque<Runnable> later = new ArrayDeque<>();
    ChooseModel model = model(later::add);
    model.propose();
    assertThat(model.runningProperty().get()).isTrue();
    model.stop();
    later.forEach(Runnable::run);

    assertThat(model.isSettled()).isTrue();
    assertThat(model.chosenProperty().get()).isEmpty();
  }

  @Test
  void whatIsAskedIsKeptWithTheLineupAndComesBackByUndo() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.ask(wishes -> wishes.with("red", PaintWish.NEVER));

    assertThat(kept("lineup")).contains(LineupWishes.of(3, 0).with("red", PaintWish.NEVER));
    assertThat(model(Sessions.AT_ONCE).wish("red")).isEqualTo(PaintWish.NEVER);
    session.undo();
    assertThat(kept("lineup")).isEmpty();
    assertThat(model.wish("red")).isEqualTo(PaintWish.FREE);
  }

  @Test
  void askingTheSameAgainIsNoEdit() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.ask(wishes -> wishes.with("red", PaintWish.FREE).withPlaces(3, 0));

    assertThat(session.historyProperty().get().past()).isEmpty();
  }

  @Test
  void everyLineupHasItsOwnAndAProposalTakesThemAlong() {
    ChooseModel model = model(Sessions.AT_ONCE);
    session.perform(new Edit.AddLineup(new Lineup("other", "other", "box", Map.of())));
    model.ask(wishes -> wishes.withPlaces(2, 0));
    model.propose();
    model.make(best(model), 1);
    assertThat(session.lineup().flatMap(Lineup::wishes)).contains(LineupWishes.of(2, 0));

    session.look("other");
    assertThat(model.wishesProperty().get()).isEqualTo(LineupWishes.of(3, 0));
  }

  @Test
  void aPaintTakenOffTheShelfCountsForNothing() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.ask(wishes -> wishes.withPlaces(2, 0).with("red", PaintWish.MUST));
    session.perform(new Edit.RemovePaint("red"));
    model.propose();

    assertThat(best(model).paints()).containsExactlyInAnyOrder("yellow", "blue");
  }

  private Optional<LineupWishes> kept(String lineupId) {
    return session.kit().lineup(lineupId).flatMap(Lineup::wishes);
  }

  private static Proposal best(ChooseModel model) {
    return model.chosenProperty().get().orElseThrow().choice().proposals().get(0);
  }

  private ChooseModel model(Executor away) {
    PigmentLibrary library = new PigmentLibrary(List.of());
    return new ChooseModel(
        session,
        new Chooser(library),
        new Arranger(library),
        away,
        Sessions.AT_ONCE,
        Sessions::fail);
  }
}
