package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.kit.Edit;
import org.panwright.kit.Lineup;

class SessionTest {
  private static final Edit RED_IN_THREE = new Edit.PlacePaint(ThreePaintKit.LINEUP, "w3", "red");

  private final Session session = Sessions.on(ThreePaintKit.kit());

  @Test
  void judgesTheFirstLineupAtTheStart() {
    assertThat(session.judgementProperty().get())
        .hasValueSatisfying(judgement -> assertThat(judgement.grid().size()).isEqualTo(2));
  }

  @Test
  void editIsJudgedAndCanBeTakenBack() {
    session.perform(RED_IN_THREE);
    assertThat(paints()).isEqualTo(3);

    session.undo();
    assertThat(paints()).isEqualTo(2);
    assertThat(session.kit()).isEqualTo(ThreePaintKit.kit());

    session.redo();
    assertThat(paints()).isEqualTo(3);
  }

  @Test
  void previewShowsAnEditWithoutDoingIt() {
    session.preview(RED_IN_THREE);

    assertThat(session.previewProperty().get())
        .hasValueSatisfying(judgement -> assertThat(judgement.grid().size()).isEqualTo(3));
    assertThat(paints()).isEqualTo(2);
    assertThat(session.kit()).isEqualTo(ThreePaintKit.kit());

    session.endPreview();
    assertThat(session.previewProperty().get()).isEmpty();
  }

  @Test
  void performingEndsAPreview() {
    session.preview(RED_IN_THREE);
    session.perform(RED_IN_THREE);

    assertThat(session.previewProperty().get()).isEmpty();
  }

  @Test
  void looksAtAnotherLineupWhenTheOneLookedAtIsRemoved() {
    Lineup empty = session.lineup().orElseThrow();
    session.perform(new Edit.AddLineup(new Lineup("other", "other", "box", java.util.Map.of())));
    session.perform(new Edit.RemoveLineup(empty.id()));

    assertThat(session.lineup().map(Lineup::id)).contains("other");
    assertThat(paints()).isZero();
  }

  @Test
  void kitWithoutLineupsHasNoJudgement() {
    session.perform(new Edit.RemoveBox("box"));

    assertThat(session.lineup()).isEqualTo(Optional.empty());
    assertThat(session.judgementProperty().get()).isEmpty();
  }

  private int paints() {
    return session.judgementProperty().get().orElseThrow().grid().size();
  }
}
