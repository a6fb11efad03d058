package org.panwright.app.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.app.ThreePaintKit;
import org.panwright.paint.Handling;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Transparency;
import org.panwright.store.PigmentLibraryReader;

class PaintEditorModelTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final PigmentName ULTRAMARINE = PigmentName.of("PB29");
  private static final PigmentName PHTHALO_GREEN = PigmentName.of("PG7");

  private final PaintEditorModel model = PaintEditorModel.ofNew(LIBRARY, "new");

  @Test
  void anEmptyFormSaysWhatToDoFirst() {
    assertThat(model.nameProblemProperty().getValue()).isEmpty();
    assertThat(model.pigmentsProblemProperty().getValue()).contains("PB29").contains("Enter");
    assertThat(model.paintProperty().getValue()).isEmpty();
  }

  @Test
  void aPaintOfOnePigmentIsNamedAfterItUntilANameIsTyped() {
    model.add(ULTRAMARINE);
    assertThat(model.paintProperty().getValue()).map(Paint::name).contains("Ultramarine blue");
    model.nameProperty().set("Sea");
    assertThat(model.paintProperty().getValue()).map(Paint::name).contains("Sea");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '=',
      value = {
        "PBr7 burnt sienna = Burnt sienna",
        "PV19 rose = Quinacridone rose",
        "PB15:3 = Phthalocyanine blue, green shade"
      })
  void theNameIsShortAndTellsShadesApart(String pigment, String name) {
    model.add(PigmentName.parse(pigment.strip()));
    assertThat(model.paintProperty().getValue()).map(Paint::name).contains(name.strip());
  }

  @Test
  void aPaintOfSeveralPigmentsNeedsAName() {
    model.add(ULTRAMARINE);
    model.add(PHTHALO_GREEN);
    assertThat(model.nameProblemProperty().getValue()).contains("name");
    assertThat(model.paintProperty().getValue()).isEmpty();
  }

  @Test
  void anotherPaintStartsWithMakerAndOwnershipOfTheLast() {
    model.nameProperty().set("Sea");
    model.makerProperty().set("own");
    model.ownershipProperty().set(Ownership.WISHED);
    model.noteProperty().set("a gift");
    model.add(ULTRAMARINE);
    model.startAnew("next", "Sea");
    assertThat(model.addedProperty().get()).contains("Sea");
    assertThat(model.paintProperty().getValue()).isEmpty();
    model.add(PHTHALO_GREEN);
    Paint next = model.paintProperty().getValue().orElseThrow();
    assertThat(next.id()).isEqualTo("next");
    assertThat(next.maker()).isEqualTo("own");
    assertThat(next.ownership()).isEqualTo(Ownership.WISHED);
    assertThat(next.note()).isEmpty();
    assertThat(next.codes()).isEqualTo("PG7");
  }

  @Test
  void aNameAndAPigmentMakeAPaint() {
    model.nameProperty().set(" French blue ");
    model.add(ULTRAMARINE);
    Paint paint = model.paintProperty().getValue().orElseThrow();
    assertThat(paint.name()).isEqualTo("French blue");
    assertThat(paint.pigments()).containsExactly(new PigmentShare(ULTRAMARINE, 1));
    assertThat(paint.ownership()).isEqualTo(Ownership.OWNED);
  }

  @Test
  void theColourShowsBeforeThePaintHasAName() {
    model.add(ULTRAMARINE);
    model.add(PHTHALO_GREEN);
    assertThat(model.lookProperty().getValue()).isPresent();
    assertThat(model.paintProperty().getValue()).isEmpty();
  }

  @Test
  void handlingFollowsThePigmentUntilThePainterSaysOtherwise() {
    model.nameProperty().set("blue");
    model.add(ULTRAMARINE);
    Handling usual = LIBRARY.find(ULTRAMARINE).map(Pigment::handling).orElseThrow();
    assertThat(model.paintProperty().getValue()).map(Paint::handling).contains(usual);
    model.handling().asUsualProperty().set(false);
    model.handling().transparencyProperty().set(Transparency.OPAQUE);
    assertThat(model.paintProperty().getValue())
        .map(paint -> paint.handling().transparency())
        .contains(Transparency.OPAQUE);
    model.handling().asUsualProperty().set(true);
    assertThat(model.paintProperty().getValue()).map(Paint::handling).contains(usual);
  }

  @Test
  void partsBecomeSharesOfTheWhole() {
    model.nameProperty().set("green");
    model.add(ULTRAMARINE);
    model.add(PHTHALO_GREEN);
    model.pigments().get(0).partsProperty().set("3");
    model.pigments().get(1).partsProperty().set("1");
    List<PigmentShare> shares = model.paintProperty().getValue().orElseThrow().pigments();
    assertThat(shares.get(0).share()).isCloseTo(0.75, within(1e-12));
    assertThat(shares.get(1).share()).isCloseTo(0.25, within(1e-12));
  }

  @ParameterizedTest(name = "<{0}>")
  @ValueSource(strings = {"", "0", "-1", "some"})
  void partsThatAreNoNumberAboveNothingAreNamed(String typed) {
    model.nameProperty().set("blue");
    model.add(ULTRAMARINE);
    model.pigments().get(0).partsProperty().set(typed);
    assertThat(model.pigmentsProblemProperty().getValue()).contains("PB29").contains("above 0");
    assertThat(model.paintProperty().getValue()).isEmpty();
  }

  @Test
  void aPigmentIsAddedOnce() {
    model.add(ULTRAMARINE);
    model.add(ULTRAMARINE);
    assertThat(model.pigments()).hasSize(1);
  }

  @Test
  void anUntouchedPaintComesBackUnchanged() {
    double third = 1.0 / 3;
    Paint mixed =
        new Paint(
            "p",
            "third",
            "",
            List.of(
                new PigmentShare(ULTRAMARINE, third), new PigmentShare(PHTHALO_GREEN, 1 - third)),
            LIBRARY.find(ULTRAMARINE).orElseThrow().handling(),
            Ownership.WISHED,
            Optional.empty(),
            "note");
    assertThat(PaintEditorModel.of(LIBRARY, mixed, "p").paintProperty().getValue()).contains(mixed);
  }

  @Test
  void aMeasuredPaintKeepsItsOpticsUntilToldToEstimate() {
    Paint measured = ThreePaintKit.paint("red", "PR254", 380, 580);
    PaintEditorModel editor = PaintEditorModel.of(LIBRARY, measured, measured.id());
    assertThat(editor.isMeasured()).isTrue();
    assertThat(editor.paintProperty().getValue().flatMap(Paint::measured))
        .isEqualTo(measured.measured());
    editor.keepMeasuredProperty().set(false);
    assertThat(editor.paintProperty().getValue().flatMap(Paint::measured)).isEmpty();
  }
}
