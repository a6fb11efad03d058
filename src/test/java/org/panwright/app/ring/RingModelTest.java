package org.panwright.app.ring;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.panwright.analysis.reach.Ring;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.recipes.Wanted;
import org.panwright.kit.Edit;

class RingModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final RingModel model = new RingModel(session);

  @Test
  void shelfReachesAtLeastAsFarAsTheLineup() {
    RingPicture picture = model.pictureProperty().getValue().orElseThrow();

    for (int step = 0; step < Ring.STEPS; step++) {
      assertThat(picture.shelf().chroma(step))
          .isGreaterThanOrEqualTo(picture.lineup().chroma(step));
    }
  }

  @Test
  void everyPaintOfTheLineupHasItsDot() {
    assertThat(model.pictureProperty().getValue().orElseThrow().paints())
        .extracting(RingPicture.Dot::name)
        .containsExactly("yellow", "blue");
  }

  @Test
  void tryingARedReachesHuesTheLineupCannot() {
    session.preview(new Edit.PlacePaint(ThreePaintKit.LINEUP, "w3", "red"));
    RingPicture picture = model.pictureProperty().getValue().orElseThrow();
    int red = Ring.step(30);

    assertThat(picture.trial()).isPresent();
    assertThat(picture.trial().orElseThrow().chroma(red))
        .isGreaterThan(picture.lineup().chroma(red));
  }

  @Test
  void kitWithoutLineupHasNoRing() {
    session.perform(new Edit.RemoveBox("box"));

    assertThat(model.pictureProperty().getValue()).isEmpty();
  }

  @Test
  void goingRoundTheCircleSaysWhatIsReachedThereAndPicksAColour() {
    RingCursor cursor = model.cursor();
    cursor.turn(1);
    assertThat(cursor.placeProperty().get()).contains(new RingCursor.Place(0.12, 90));
    cursor.turn(-20);
    cursor.outward(9);
    assertThat(cursor.placeProperty().get()).contains(new RingCursor.Place(0.24, 350));
    RingPicture picture = model.pictureProperty().getValue().orElseThrow();
    assertThat(model.summary())
        .startsWith(
            "Magenta, hue 350°, chroma 0.24. This lineup reaches %.2f"
                .formatted(picture.lineup().chroma(70)));

    cursor.pick();
    assertThat(session.selectionProperty().get()).isEqualTo(Wanted.hue(0.24, 350));
  }
}
