package org.panwright.app.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

class LineupModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final LineupModel model = new LineupModel(session);

  @Test
  void aLineupIsNamedWithItsBox() {
    assertThat(model.entries())
        .extracting(LineupModel.Entry::label)
        .containsExactly("two paints  ·  small box");
    assertThat(model.chosen()).contains(model.entries().get(0));
  }

  @Test
  void aNewLineupIsEmptyAndLookedAt() {
    model.add("  sea  ", session.kit().boxes().get(0));
    assertThat(session.lineup()).map(Lineup::name).contains("sea");
    assertThat(session.lineup().orElseThrow().fillings()).isEmpty();
  }

  @Test
  void aCopyHoldsTheSamePaintsUnderAnotherName() {
    Lineup original = session.lineup().orElseThrow();
    model.duplicate();
    Lineup copy = session.lineup().orElseThrow();
    assertThat(copy.id()).isNotEqualTo(original.id());
    assertThat(copy.name()).isEqualTo("two paints (copy)");
    assertThat(copy.fillings()).isEqualTo(original.fillings());
  }

  @Test
  void aRenamedLineupStaysTheOneLookedAt() {
    model.rename("sea");
    assertThat(session.lineup()).map(Lineup::id).contains(ThreePaintKit.LINEUP);
    assertThat(session.lineup()).map(Lineup::name).contains("sea");
  }

  @Test
  void aRemovedLineupComesBackWithUndo() {
    Kit before = session.kit();
    model.remove();
    assertThat(model.entries()).isEmpty();
    assertThat(model.chosen()).isEmpty();
    session.undo();
    assertThat(session.kit()).isEqualTo(before);
    assertThat(model.chosen()).isPresent();
  }
}
