package org.panwright.app.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Arranger;
import org.panwright.analysis.Chooser;
import org.panwright.analysis.Conditions;
import org.panwright.analysis.Contradiction;
import org.panwright.analysis.Proposal;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Filling;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;

class ChooseModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());

  @Test
  void asksAtFirstForAsManyPaintsAsTheBoxHasWells() {
    ChooseModel model = model(Sessions.AT_ONCE);
    assertThat(model.conditionsProperty().get().wells()).isEqualTo(3);
    assertThat(model.conditionsProperty().get().dabs()).isZero();
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
    model.wish("blue", Wish.KEPT);
    model.propose();
    model.make(best(model), 1);

    assertThat(session.lineup().flatMap(l -> l.in("w2")).map(Filling::paintId))
        .isEqualTo(Optional.of("blue"));
  }

  @Test
  void whatMustNeverBeInIsNotProposed() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.conditionsProperty().set(Conditions.of(2, 0));
    model.wish("red", Wish.NEVER);
    model.wish("yellow", Wish.MUST);
    model.propose();

    assertThat(best(model).paints()).containsExactlyInAnyOrder("yellow", "blue");
  }

  @Test
  void moreThanTheShelfHoldsIsToldNotTried() {
    ChooseModel model = model(Sessions.AT_ONCE);
    model.conditionsProperty().set(Conditions.of(4, 0));
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
