package org.panwright.app.box;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.app.BenchKit;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Well;

class BoxModelTest {
  private final Session session = BenchKit.session(BenchKit.kit());
  private final Hand hand = new Hand(session);
  private final BoxModel model = new BoxModel(session, new ToneBook(BenchKit.LIBRARY), hand);

  private Optional<Filling> in(String wellId) {
    return session.lineup().flatMap(l -> l.in(wellId));
  }

  private WellPicture shown(String wellId) {
    return model.pictureProperty().get().orElseThrow().wells().stream()
        .filter(w -> w.well().id().equals(wellId))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void showsEveryWellWithWhatIsInIt() {
    assertThat(model.pictureProperty().get().orElseThrow().filled()).isEqualTo(3);
    assertThat(shown("w3").content().orElseThrow().fill()).isEqualTo(Fill.HALF);
    assertThat(shown("w4").content()).isEmpty();
    assertThat(shown("w3").spoken()).contains("Well 3", "Quinacridone Rose", "PV19", "half full");
  }

  @Test
  void wellSaysTheHueOfItsPaint() {
    assertThat(shown("w1").spoken()).contains("yellow");
    assertThat(shown("w2").spoken()).contains("blue");
  }

  @Test
  void fillGoesFromFullToHalfToDabAndRound() {
    model.cycleFill("w1");
    assertThat(in("w1").orElseThrow().fill()).isEqualTo(Fill.HALF);
    model.cycleFill("w1");
    assertThat(in("w1").orElseThrow().fill()).isEqualTo(Fill.DAB);
    model.cycleFill("w1");
    assertThat(in("w1").orElseThrow().fill()).isEqualTo(Fill.FULL);
    assertThat(hand.statusProperty().get()).contains("Lemon Yellow").contains("full");
  }

  @Test
  void emptyingAnEmptyWellSaysSoAndDoesNothing() {
    model.empty("w5");
    model.cycleFill("w5");
    assertThat(session.historyProperty().get().past()).isEmpty();
    assertThat(hand.statusProperty().get()).contains("Well 5 is empty");
  }

  @Test
  void emptyingTakesThePaintOut() {
    model.empty("w2");
    assertThat(in("w2")).isEmpty();
    assertThat(session.historyProperty().get().undoable())
        .contains(new Edit.EmptyWell("line", "w2"));
  }

  @Test
  void undoAndRedoPickTheWellTheyTouched() {
    model.move("w1", "w6");
    session.selectionProperty().set(Selection.NOTHING);
    session.undo();
    assertThat(model.pickedProperty().get()).contains("w1");
    session.redo();
    assertThat(model.pickedProperty().get()).contains("w6");
  }

  @Test
  void paintPickedOnTheShelfMarksItsWells() {
    session.perform(new Edit.PlacePaint("line", "w5", "ultra"));
    session.selectionProperty().set(new Selection.OfPaint("ultra"));
    assertThat(model.relatedProperty().get()).containsExactlyInAnyOrder("w2", "w5");
    assertThat(model.pickedProperty().get()).isEmpty();
  }

  @Test
  void mixPickedInTheGridMarksBothWells() {
    session.selectionProperty().set(new Selection.OfMix("lemon", "rose", 3));
    assertThat(model.relatedProperty().get()).containsExactlyInAnyOrder("w1", "w3");
  }

  @Test
  void carriedPaintStopsFirstAtAnEmptyWell() {
    assertThat(model.firstStop().map(Well::id)).contains("w4");
    model.pick("w6");
    assertThat(model.firstStop().map(Well::id)).contains("w6");
    model.pick("w1");
    assertThat(model.firstStop().map(Well::id)).contains("w4");
  }

  @Test
  void kitWithoutLineupShowsNoBox() {
    Session bare = BenchKit.session(Kit.empty("Bare"));
    BoxModel none = new BoxModel(bare, new ToneBook(BenchKit.LIBRARY), new Hand(bare));
    assertThat(none.pictureProperty().get()).isEmpty();
    assertThat(none.firstStop()).isEmpty();
    none.empty("w1");
    none.cycleFill("w1");
    assertThat(bare.historyProperty().get().past()).isEmpty();
  }

  @Test
  void openingAnotherKitShowsItsBox() {
    session.open(Kit.empty("Bare"));
    assertThat(model.pictureProperty().get()).isEmpty();
    session.open(BenchKit.kit());
    assertThat(model.pictureProperty().get()).isPresent();
  }
}
