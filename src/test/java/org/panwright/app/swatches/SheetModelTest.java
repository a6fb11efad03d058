package org.panwright.app.swatches;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.kit.Kit;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.kept.PaintFitReport;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.Card;
import org.panwright.swatch.sheet.InventedShelf;
import org.panwright.swatch.sheet.PaintedPage;
import org.panwright.swatch.sheet.PatchKind;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingNote;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.SheetPlan;
import org.panwright.swatch.sheet.Sheets;
import org.panwright.swatch.sheet.SimulatedCamera;
import org.panwright.words.PictureWords;

/** A painted sheet of known paints, read off a photo, in the model of the view. */
class SheetModelTest {
  /** The first rows of the sheet; the others stay blank. */
  private static final List<String> PAINTS = List.of("white", "black", "yellow", "orange red");

  @TempDir static Path folder;
  private static Path photo;
  private Desks desks;
  private SheetModel sheet;

  @BeforeAll
  static void takePhoto() {
    photo =
        SimulatedCamera.scanner(900, 1270)
            .save(Sheets.painted(SheetFormat.A4, PAINTS), folder.resolve("sheet.jpg"));
  }

  @BeforeEach
  void open() {
    desks = new Desks(Desks.kit());
    sheet = desks.sheet;
    sheet.setChosen(true);
  }

  @Test
  void eachRowIsNamedByItsMarkAndReadAsItWasPainted() {
    desks.pictures.open(photo);

    List<SheetRow> rows = sheet.stateProperty().get().rows();
    assertThat(rows).extracting(row -> row.paintId().orElse("")).isEqualTo(PAINTS);
    // The colour put on the page, not one the program worked out.
    PatchChip black = rows.get(PAINTS.indexOf("black")).chips().get(0);
    assertThat(
            Difference.ciede2000(
                black.read(),
                Light.D65.lab(
                    InventedShelf.coat(List.of(new PaintLoad("black", 1)), PaintedPage.PAPER))))
        .isLessThan(2);
    assertThat(sheet.canKeep()).isTrue();
    assertThat(sheet.isSettled()).isTrue();
  }

  @Test
  void learningIsToldInSharesAndMayBeLeftOffAndTakenUp() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    desks = new Desks(Desks.kit(), waiting::add);
    sheet = desks.sheet;
    sheet.setChosen(true);
    desks.pictures.open(photo);
    assertThat(sheet.stateProperty().get().stage()).isEqualTo(Learning.Stage.RUNNING);

    sheet.leaveOff();
    waiting.remove().run();

    assertThat(sheet.stateProperty().get().stage()).isEqualTo(Learning.Stage.LEFT_OFF);
    assertThat(sheet.stateProperty().get().rows()).hasSize(PAINTS.size());
    assertThat(sheet.canKeep()).isFalse();
    List<Double> shares = new ArrayList<>();
    sheet.shareProperty().addListener((property, before, now) -> shares.add(now.doubleValue()));
    sheet.takeUp();
    waiting.remove().run();
    assertThat(sheet.stateProperty().get().stage()).isEqualTo(Learning.Stage.DONE);
    assertThat(sheet.canKeep()).isTrue();
    assertThat(shares).hasSizeGreaterThan(20).isSorted().allMatch(share -> share > 0 && share < 1);
  }

  @Test
  void whatIsReadNextDoesNotWaitForWhatWasLearntFromTheLast() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    desks = new Desks(Desks.kit(), waiting::add);
    sheet = desks.sheet;
    sheet.setChosen(true);
    desks.pictures.open(photo);
    sheet.formatProperty().set(SheetFormat.LETTER);
    sheet.formatProperty().set(SheetFormat.A4);
    List<SheetState> told = new ArrayList<>();
    sheet.stateProperty().addListener((property, before, now) -> told.add(now));

    waiting.remove().run();
    assertThat(told).isEmpty();
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
    assertThat(told).extracting(SheetState::stage).containsExactly(Learning.Stage.DONE);
  }

  /** The yellow's tint was painted with the orange red instead. */
  @Test
  void theCoatThatDisagreesWithTheRestIsNamedWithItsPaint() {
    PaintedPage page = Sheets.painted(SheetFormat.A4, PAINTS);
    Zone tint =
        PaintedPage.outlines(Sheets.papers(SheetFormat.A4).sheets().get(0))
            .get(4 * PAINTS.indexOf("yellow") + PatchKind.TINT.ordinal());
    page.paint(tint, List.of(new PaintLoad("orange red", 0.5), new PaintLoad("white", 0.5)));

    desks.pictures.open(
        SimulatedCamera.scanner(900, 1270).save(page, folder.resolve("contaminated.jpg")));

    assertThat(sheet.stateProperty().get().remarks())
        .anyMatch(
            said ->
                said.startsWith("Look at this coat again: yellow, full strength 1:1 with white."));
    desks.pictures.open(photo);
    assertThat(sheet.stateProperty().get().remarks())
        .noneMatch(said -> said.startsWith("Look at this coat again"));
  }

  /** Row 3 was painted with one wash throughout. */
  @Test
  void aRowWhosePatchesAreAllAlikeIsNamedUntilItIsLeftOut() {
    PaintedPage page = Sheets.painted(SheetFormat.A4, PAINTS);
    int row = PAINTS.indexOf("yellow");
    for (int i = 0; i < 4; i++) {
      Zone patch =
          PaintedPage.outlines(Sheets.papers(SheetFormat.A4).sheets().get(0)).get(4 * row + i);
      page.paint(patch, List.of(new PaintLoad("yellow", 0.5)));
    }

    desks.pictures.open(SimulatedCamera.scanner(900, 1270).save(page, folder.resolve("alike.jpg")));

    assertThat(sheet.stateProperty().get().remarks())
        .anyMatch(said -> said.startsWith("All patches of row 3 have the same colour"));
    sheet.say(row, Optional.empty());
    assertThat(sheet.stateProperty().get().remarks())
        .noneMatch(said -> said.contains("have the same colour"));
  }

  /**
   * A card that turns back 18 % lies on a patch of the last row. Said to turn back only half as
   * much, it makes everything half as light: by hand, L* of the paper is 116 (Y/2)^(1/3) − 16.
   */
  @Test
  void aCardOnTheSheetTellsThePapersOwnColour() {
    SheetPlan plan = new SheetPlan(SheetFormat.A4);
    PaintedPage page = Sheets.painted(SheetFormat.A4, PAINTS);
    Zone patch = plan.onPaper(plan.rows() - 1, PatchKind.FULL);
    page.spot(
        new Zone(patch.x() - 3, patch.y() - 3, patch.width() + 6, patch.height() + 6), Card.GREY);
    SimulatedCamera camera = SimulatedCamera.scanner(900, 1270);
    desks.pictures.open(camera.save(page, folder.resolve("card.jpg")));
    Point middle = camera.place(page).map(patch.middle());
    double light = Light.D65.lab(PaintedPage.PAPER).l();

    sheet.marks().pointAt(middle);
    assertThat(sheet.marks().marks()).hasSize(4);
    sheet.marks().cardLiesProperty().set(true);
    sheet.marks().pointAt(middle);
    assertThat(paper().l()).isCloseTo(light, within(1.0));
    sheet.cardProperty().set(Card.GREY / 2);

    double y = Math.pow((light + 16) / 116, 3);
    assertThat(paper().l()).isCloseTo(116 * Math.cbrt(y / 2) - 16, within(1.0));
    sheet.keep();
    Paint black = desks.session.kit().shelf().find("black").orElseThrow();
    assertThat(black.swatchbook().coats().get(0).ground().orElseThrow().lab()).isEqualTo(paper());
    sheet.cardProperty().set(0.02);
    assertThat(sheet.stateProperty().get().remarks())
        .contains(PictureWords.sentence(new ReadingNote.CardUnused()));
    sheet.marks().remove(4);
    assertThat(sheet.stateProperty().get().remarks())
        .doesNotContain(PictureWords.sentence(new ReadingNote.CardUnused()));
  }

  private Lab paper() {
    return sheet.stateProperty().get().reading().orElseThrow().paper();
  }

  @Test
  void oneReadingChangesWhatIsShownTwiceAtMost() {
    List<SheetState> states = new ArrayList<>();
    sheet.stateProperty().addListener((property, before, now) -> states.add(now));

    desks.pictures.open(photo);

    assertThat(states).hasSizeLessThanOrEqualTo(2);
    assertThat(states.get(0).learning()).isTrue();
    assertThat(states.get(states.size() - 1).report()).isPresent();
  }

  @Test
  void theFormerModelStaysWhileThePaintsLearnAnew() {
    desks.pictures.open(photo);
    List<SheetState> states = new ArrayList<>();
    sheet.stateProperty().addListener((property, before, now) -> states.add(now));

    sheet.say(PAINTS.indexOf("yellow"), Optional.empty());

    SheetRow black = states.get(0).rows().get(PAINTS.indexOf("black"));
    assertThat(states.get(0).learning()).isTrue();
    assertThat(black.chips().get(0).model()).isPresent();
  }

  @Test
  void coatsDarkerThanMattOnesAreToldOf() {
    desks.pictures.open(photo);
    assertThat(sheet.stateProperty().get().remarks()).noneMatch(remark -> remark.contains("sheen"));
    PaintedPage page = Sheets.painted(SheetFormat.A4, PAINTS);
    Zone full =
        PaintedPage.outlines(Sheets.papers(SheetFormat.A4).sheets().get(0))
            .get(4 * PAINTS.indexOf("black"));
    // 1.2 % turned back, over paper and line alike: L* 116 ∛0.012 − 16 = 10.6 (CIE 015).
    page.spot(
        new Zone(full.x() + 0.4, full.y() + 0.4, full.width() - 0.8, full.height() - 0.8), 0.012);

    desks.pictures.open(SimulatedCamera.scanner(900, 1270).save(page, folder.resolve("dark.jpg")));

    assertThat(sheet.stateProperty().get().remarks())
        .anyMatch(
            remark -> remark.startsWith("The darkest swatch is as dark as a matt coat can be"));
  }

  @Test
  void keepingIsOneEditThatTellsWhereItCameFrom() {
    desks.pictures.open(photo);
    Kit before = desks.session.kit();

    sheet.keep();

    Paint orange = paint("orange red");
    assertThat(orange.measured()).isPresent();
    assertThat(orange.swatchbook().coats())
        .extracting(PaintedCoat::source)
        .containsOnly("sheet.jpg");
    assertThat(orange.swatchbook().origin())
        .contains(
            new OpticsOrigin(Optional.of(Desks.DAY), OpticsOrigin.Reason.FITTED, "sheet.jpg"));
    desks.session.undo();
    assertThat(desks.session.kit()).isEqualTo(before);
  }

  @Test
  void keepingDoesNotLearnTheSameAgain() {
    Deque<Runnable> waiting = new ArrayDeque<>();
    desks = new Desks(Desks.kit(), waiting::add);
    sheet = desks.sheet;
    sheet.setChosen(true);
    desks.pictures.open(photo);
    waiting.remove().run();
    Optional<PaintFitReport> learnt = sheet.stateProperty().get().report();

    sheet.keep();

    assertThat(paint("black").measured()).isPresent();
    assertThat(waiting).isEmpty();
    assertThat(sheet.stateProperty().get().report()).isEqualTo(learnt);
    assertThat(sheet.canKeep()).isTrue();
    desks.session.undo();
    assertThat(waiting).hasSize(1);
  }

  @Test
  void aRowLeftOutIsNotKept() {
    desks.pictures.open(photo);

    sheet.say(PAINTS.indexOf("yellow"), Optional.empty());
    sheet.keep();

    assertThat(paint("yellow").swatchbook().coats()).isEmpty();
    assertThat(paint("yellow").measured()).isEmpty();
    assertThat(paint("black").swatchbook().coats()).isNotEmpty();
  }

  @Test
  void rowsPaintedInEachOthersPlaceCanBeExchanged() {
    List<String> wrong = new ArrayList<>(PAINTS);
    Collections.swap(wrong, PAINTS.indexOf("yellow"), PAINTS.indexOf("black"));
    desks.pictures.open(
        SimulatedCamera.scanner(900, 1270)
            .save(Sheets.painted(SheetFormat.A4, wrong), folder.resolve("swapped.jpg")));
    SheetState state = sheet.stateProperty().get();
    assertThat(state.swapped()).isPresent();

    sheet.exchange(state.swapped().get().first(), state.swapped().get().second());

    assertThat(sheet.stateProperty().get().swapped()).isEmpty();
    assertThat(sheet.stateProperty().get().rows())
        .extracting(row -> row.paintId().orElse(""))
        .isEqualTo(wrong);
  }

  @Test
  void aWetSheetAddsToTheDryOneOnly() {
    desks.pictures.open(photo);
    sheet.choicesProperty().set(sheet.choicesProperty().get().withWet(true));
    assertThat(sheet.canKeep()).isFalse();
    sheet.choicesProperty().set(sheet.choicesProperty().get().withWet(false));
    sheet.keep();

    sheet.choicesProperty().set(sheet.choicesProperty().get().withWet(true));
    sheet.keep();

    // The same picture twice: wet and dry are alike, so the shift is none.
    assertThat(paint("black").swatchbook().dryingShift())
        .hasValueSatisfying(shift -> assertThat(shift.lightness()).isZero());
  }

  @Test
  void aSheetOfAnotherKitSaysSo() {
    Desks others = new Desks(Kit.empty("another kit"));
    others.sheet.setChosen(true);

    others.pictures.open(photo);

    assertThat(others.sheet.stateProperty().get().remarks())
        .anyMatch(remark -> remark.contains("printed for another kit"));
    assertThat(others.sheet.canKeep()).isFalse();
  }

  @Test
  void cornersInOneLineAreToldAndNothingIsShownAsRead() {
    desks.pictures.open(photo);

    for (int corner = 0; corner < 4; corner++) {
      sheet.corners().move(corner, new Point(100 + 50 * corner, 100));
    }

    assertThat(sheet.stateProperty().get().fault()).contains(new ReadingFault.NoArea());
    assertThat(sheet.stateProperty().get().rows()).isEmpty();
    assertThat(sheet.canKeep()).isFalse();
  }

  @Test
  void nothingIsReadWhileAnotherWayIsChosen() {
    sheet.setChosen(false);
    desks.pictures.open(photo);
    assertThat(sheet.stateProperty().get()).isEqualTo(SheetState.NONE);

    sheet.setChosen(true);

    assertThat(sheet.stateProperty().get().rows()).hasSize(PAINTS.size());
  }

  private Paint paint(String id) {
    return desks.session.kit().shelf().find(id).orElseThrow();
  }
}
