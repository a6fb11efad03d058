package org.panwright.app.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.judge.Judge;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;

class CompareModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final CompareModel model =
      new CompareModel(
          session,
          new Judge(new PigmentLibrary(List.of())),
          Sessions.AT_ONCE,
          Sessions.AT_ONCE,
          Sessions::fail);

  @Test
  void oneLineupAloneHasNothingBesideIt() {
    assertThat(model.comparedProperty().get()).isEmpty();
    assertThat(model.isSettled()).isTrue();
  }

  @Test
  void aLineupStandsBesideItselfBeforeTheLastEdit() {
    session.perform(new Edit.PlacePaint(ThreePaintKit.LINEUP, "w3", "red"));

    assertThat(compared().comparison().leaving()).containsExactly("red");
    assertThat(compared().first().label()).isEqualTo("two paints");
    assertThat(compared().second().label()).startsWith("two paints, before: put");
  }

  @Test
  void oneExchangeIsComparedWithoutChangingTheKit() {
    model.exchange(model.paintsOfFirst().get(1), model.paintsBesideFirst().get(0));

    assertThat(compared().comparison().leaving()).containsExactly("blue");
    assertThat(compared().comparison().coming()).containsExactly("red");
    assertThat(session.historyProperty().get().past()).isEmpty();
  }

  @Test
  void rowsOfBothGridsAreWhatIsInBothThenTheRest() {
    add("other", "blue", "red");

    assertThat(compared().paints()).containsExactly("blue", "yellow", "red");
  }

  @Test
  void changingSidesTurnsWonIntoLost() {
    add("other", "blue", "red");
    model.turnRound();

    assertThat(compared().comparison().leaving()).containsExactly("red");
    assertThat(compared().first().label()).isEqualTo("other");
  }

  @Test
  void aSideThatLeavesTheKitLeavesTheComparison() {
    add("other", "blue", "red");
    session.perform(new Edit.RemoveLineup("other"));

    assertThat(model.comparedProperty().get()).isEmpty();
  }

  private Compared compared() {
    return model.comparedProperty().get().orElseThrow();
  }

  private void add(String id, String... paints) {
    Map<String, Filling> fillings =
        Map.of("w1", new Filling(paints[0], Fill.FULL), "w2", new Filling(paints[1], Fill.FULL));
    session.perform(new Edit.AddLineup(new Lineup(id, id, "box", fillings)));
    assertThat(Optional.of(model.choices())).isNotEmpty();
  }
}
