package org.panwright.app.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.WellKind;

class BoxEditorModelTest {
  private final Kit kit = ThreePaintKit.kit();
  private final Box box = kit.boxes().get(0);
  private final BoxEditorModel model = new BoxEditorModel(kit, BoxDraft.of(box));

  @Test
  void anUnchangedDraftIsTheBox() {
    assertThat(model.problemProperty().getValue()).isEmpty();
    assertThat(model.draft().toBox()).contains(box);
  }

  @Test
  void movingTheWellPickedMovesNoOther() {
    model.pickedProperty().set(Optional.of("w3"));
    model.changePicked(well -> well.at(41, 3));
    assertThat(model.draft().find("w3").orElseThrow().xMm()).isEqualTo(41);
    assertThat(model.draft().find("w1")).contains(WellDraft.of(box.wells().get(0)));
  }

  @Test
  void wellsOnEachOtherAreNamed() {
    model.change(draft -> draft.changing("w2", well -> well.at(5, 2)));
    assertThat(model.problemProperty().getValue()).isEqualTo("Wells 1 and 2 lie on each other.");
    assertThat(model.draft().toBox()).isEmpty();
  }

  @Test
  void aWellOutsideTheBoxIsNamed() {
    model.change(draft -> draft.sized(50, 20));
    assertThat(model.problemProperty().getValue()).isEqualTo("Well 3 sticks out of the box.");
  }

  @Test
  void aSizeThatIsNoNumberIsAProblemAndNoCrash() {
    model.change(draft -> draft.sized(Double.NaN, 20));
    assertThat(model.problemProperty().getValue()).contains("10 to 1000 mm");
  }

  @Test
  void aBoxWithoutWellsIsNone() {
    for (String well : new String[] {"w1", "w2", "w3"}) {
      model.pickedProperty().set(Optional.of(well));
      model.removePicked();
    }
    assertThat(model.problemProperty().getValue()).isEqualTo("A box needs at least one well.");
  }

  @Test
  void rowsAndColumnsAreLaidOutAnewUnderTheSameName() {
    model.layOut(WellKind.PAN, 2, 3, 2);

    Box laidOut = model.draft().toBox().orElseThrow();
    assertThat(laidOut.name()).isEqualTo(box.name());
    assertThat(laidOut.id()).isEqualTo(box.id());
    assertThat(laidOut.wells()).filteredOn(w -> w.kind() == WellKind.PAN).hasSize(6);
    assertThat(laidOut.wells()).filteredOn(w -> w.kind() == WellKind.DAB).hasSize(2);
  }

  @Test
  void paintsThatWouldLeaveTheBoxAreNamed() {
    model.pickedProperty().set(Optional.of("w2"));
    model.removePicked();
    assertThat(model.leavingProperty().getValue())
        .isEqualTo("These paints would leave the box: blue from well 2 (two paints).");
  }

  @Test
  void anEmptyWellMayGoUnmentioned() {
    model.pickedProperty().set(Optional.of("w3"));
    model.removePicked();
    assertThat(model.leavingProperty().getValue()).isEmpty();
  }

  @Test
  void aNewWellFindsRoomAndTheNextNumber() {
    model.change(draft -> draft.sized(90, 30));
    model.addWell();
    WellDraft added = model.pickedWell().orElseThrow();
    assertThat(added.label()).isEqualTo("4");
    assertThat(added.kind()).isEqualTo(WellKind.HALF_PAN);
    assertThat(model.problemProperty().getValue()).isEmpty();
  }

  @Test
  void steppingGoesRoundAllWells() {
    model.step(1);
    assertThat(model.pickedProperty().get()).contains("w1");
    model.step(-1);
    assertThat(model.pickedProperty().get()).contains("w3");
    model.step(1);
    assertThat(model.pickedProperty().get()).contains("w1");
  }
}
