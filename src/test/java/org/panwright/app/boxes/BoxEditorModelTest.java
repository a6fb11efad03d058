package org.panwright.app.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Box;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.Kit;
import org.panwright.kit.WellKind;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;

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

  @Test
  void aBoxWithPartsDepthAndPansComesOutAsItWentIn() {
    Box full = DemoKit.read(PigmentLibraryReader.read()).boxes().get(0);
    assertThat(BoxDraft.of(full).toBox()).contains(full);
  }

  @Test
  void anUntouchedLidFollowsTheSizeOfTheBox() {
    model.change(draft -> draft.withLid(draft.widthMm(), draft.heightMm()));
    model.change(draft -> draft.sized(90, 30));
    assertThat(model.draft().lidWidthMm()).isEqualTo(90);
    model.change(draft -> draft.withLid(88, 28));
    model.change(draft -> draft.sized(95, 30));
    assertThat(model.draft().lidWidthMm()).as("touched").isEqualTo(88);
  }

  @Test
  void aDragIsOneStepBack() {
    BoxDraft before = model.draft();
    model.pickedProperty().set(Optional.of("w3"));
    model.beginStep();
    model.moveTo(44, 5);
    model.moveTo(45, 6);
    model.endStep();
    assertThat(model.draft()).isNotEqualTo(before);
    model.undo();
    assertThat(model.draft()).isEqualTo(before);
    assertThat(model.undoableProperty().get()).isFalse();
    model.redo();
    assertThat(model.draft().find("w3").orElseThrow().yMm()).isEqualTo(6);
  }

  @Test
  void aClickThatMovesNothingIsNoStep() {
    model.beginStep();
    model.endStep();
    assertThat(model.undoableProperty().get()).isFalse();
  }

  @Test
  void rowsAreAddedBeneathWhatIsThere() {
    model.change(draft -> draft.sized(60, 80));
    model.addRows(WellKind.HALF_PAN, 2, 3);
    assertThat(model.draft().wells()).hasSize(9);
    assertThat(model.draft().wells().get(8).label()).isEqualTo("9");
    assertThat(model.problemProperty().getValue()).isEmpty();
  }

  @Test
  void aPlaceDrawnAsLargeAsADabIsForADab() {
    model.change(draft -> draft.sized(90, 60));
    model.drawWell(70, 30, 10, 10);
    assertThat(model.pickedWell().orElseThrow().kind()).isEqualTo(WellKind.DAB);
    model.drawWell(2, 30, 16, 19);
    assertThat(model.pickedWell().orElseThrow().kind()).isEqualTo(WellKind.HALF_PAN);
  }

  @Test
  void aMixingAreaUnderAWellIsNamed() {
    model.addPart(FixtureKind.MIXING_AREA);
    assertThat(model.problemProperty().getValue()).as("in the lid").isEmpty();
    model.changePart(part -> part.inLid(false));
    assertThat(model.problemProperty().getValue()).contains("stands on the mixing area");
    model.removePicked();
    assertThat(model.draft().parts()).isEmpty();
  }

  @Test
  void aPartIsNeverPickedTogetherWithAWell() {
    model.addPart(FixtureKind.MAGNET);
    model.pickedProperty().set(Optional.of("w1"));
    assertThat(model.pickedPart()).isEmpty();
  }

  /** A half pan is 10.5 mm high (common practice), so in a box 9 mm deep it stands 1.5 mm proud. */
  @Test
  void pansThatStandProudAreToldWhileTheDepthIsTyped() {
    model.change(draft -> draft.withDepth(OptionalDouble.of(9)));
    assertThat(model.fitProperty().getValue()).contains("1.5 mm above the rim");
    model.change(draft -> draft.withDepth(OptionalDouble.of(Double.NaN)));
    assertThat(model.problemProperty().getValue()).contains("depth must be a number");
    assertThat(model.fitProperty().getValue()).isEmpty();
  }

  @Test
  void aPanLargerThanItsBoxIsSaidToBe() {
    model.change(draft -> draft.sized(21, 20).withWells(draft.wells().subList(0, 1)));
    model.pickedProperty().set(Optional.of("w1"));
    model.changePicked(well -> well.at(0, 0).of(WellKind.PAN));
    assertThat(model.fitProperty().getValue()).contains("full pan is larger than the box");
  }

  /** The neighbour ends at 20 mm: 20.6 is caught half a millimetre beside it, 24 is not. */
  @Test
  void aWellComesToRestBesideItsNeighbour() {
    WellDraft neighbour = WellDraft.of(box.wells().get(0));
    double end = neighbour.xMm() + neighbour.widthMm();
    BoxDraft draft = model.draft().sized(200, 100).withWells(List.of(neighbour));
    WellDraft moved = WellDraft.of(box.wells().get(2)).sized(16, 19);
    assertThat(Snap.in(draft).placed(moved, end + 0.7, 40).xMm()).isEqualTo(end + 0.5);
    assertThat(Snap.in(draft).placed(moved, end + 7.2, 40).xMm()).isEqualTo(end + 7);
    assertThat(Snap.in(draft).placed(moved, 183.4, 40).xMm()).as("the wall").isEqualTo(184);
    assertThat(Snap.in(draft).placed(moved, 100, 40.2).yMm()).isEqualTo(40);
  }
}
