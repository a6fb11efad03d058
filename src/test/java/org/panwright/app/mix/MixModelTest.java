package org.panwright.app.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;

class MixModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final MixModel model = new MixModel(session);

  @Test
  void nothingPickedShowsNothing() {
    assertThat(model.pictureProperty().getValue()).isEmpty();
  }

  @Test
  void washesGetLighterFromButterToTea() {
    session.selectionProperty().set(new Selection.OfMix("yellow", "blue", Ratio.EVEN));

    assertThat(picture().washes())
        .hasSize(Wash.values().length)
        .isSortedAccordingTo((a, b) -> Double.compare(a.l(), b.l()));
  }

  @Test
  void wetIsDarkerThanDry() {
    session.selectionProperty().set(new Selection.OfMix("yellow", "blue", Ratio.EVEN));

    assertThat(picture().wet().l()).isLessThan(picture().dry().l());
  }

  @Test
  void paintsOfEqualStrengthTakeEqualVolumesInEvenParts() {
    session.selectionProperty().set(new Selection.OfMix("yellow", "red", Ratio.EVEN));

    assertThat(picture().firstVolume()).isCloseTo(0.5, within(1e-3));
  }

  @Test
  void choosingARatioKeepsThePair() {
    session.selectionProperty().set(new Selection.OfMix("yellow", "blue", Ratio.EVEN));
    model.chooseRatio(0);

    assertThat(session.selectionProperty().get())
        .isEqualTo(new Selection.OfMix("yellow", "blue", 0));
    assertThat(picture().ratio()).isZero();
  }

  @Test
  void cellOnTheDiagonalShowsItsPaintAlone() {
    session.selectionProperty().set(new Selection.OfMix("blue", "blue", Ratio.EVEN));

    assertThat(picture().alone()).isTrue();
    assertThat(picture().first()).isEqualTo("blue");
  }

  @Test
  void pickedWellShowsNoMix() {
    session.selectionProperty().set(new Selection.OfWell("w2"));

    assertThat(model.pictureProperty().getValue()).isEmpty();
  }

  @Test
  void leavingPicksNothing() {
    session.selectionProperty().set(new Selection.OfMix("red", "red", Ratio.EVEN));
    assertThat(picture().first()).isEqualTo("red");

    model.leave();
    assertThat(session.selectionProperty().get()).isEqualTo(Selection.NOTHING);
  }

  private MixPicture picture() {
    return model.pictureProperty().getValue().orElseThrow();
  }
}
