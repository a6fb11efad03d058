package org.panwright.app.findings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.finding.Muted;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Kit;

class FindingsModelTest {
  private final Kit before = ThreePaintKit.kit();
  private final Session session = Sessions.on(before);
  private final FindingsModel model = new FindingsModel(session);

  @Test
  void yellowAndBlueWithoutRedHaveAHueGap() {
    assertThat(model.shownProperty().getValue().findings())
        .hasAtLeastOneElementOfType(HueGap.class);
  }

  @Test
  void tryingACureChangesNothing() {
    model.tryCure(gap());

    assertThat(session.previewProperty().get()).isPresent();
    assertThat(session.kit()).isEqualTo(before);

    model.endTrial();
    assertThat(session.previewProperty().get()).isEmpty();
  }

  @Test
  void cureOfTheGapPutsTheRedIntoTheEmptyWellAndClosesIt() {
    model.cure(gap());

    assertThat(session.lineup().orElseThrow().in("w3"))
        .hasValueSatisfying(filling -> assertThat(filling.paintId()).isEqualTo("red"));
    assertThat(model.shownProperty().getValue().findings())
        .doesNotHaveAnyElementsOfTypes(HueGap.class);
  }

  @Test
  void aMutedFindingLeavesTheListUntilItIsShownAgain() {
    Finding gap = gap();
    model.mute(gap, "  no reds in this place ");

    assertThat(model.shownProperty().getValue().findings()).doesNotContain(gap);
    assertThat(model.shownProperty().getValue().muted())
        .containsExactly(new Muted(gap, "no reds in this place"));

    model.tellAgain(gap);
    assertThat(model.shownProperty().getValue().muted()).isEmpty();
    assertThat(gap()).isEqualTo(gap);
  }

  @Test
  void mutingCanBeUndone() {
    model.mute(gap(), "because");
    session.undo();

    assertThat(session.kit()).isEqualTo(before);
    assertThat(model.shownProperty().getValue().muted()).isEmpty();
  }

  private Finding gap() {
    return model.shownProperty().getValue().findings().stream()
        .filter(HueGap.class::isInstance)
        .findFirst()
        .orElseThrow();
  }
}
