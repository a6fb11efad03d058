package org.panwright.app.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.CoatReading;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.file.ReadingFile;
import org.panwright.words.PaintPageWords;

class PageModelTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 5, 1);
  private static final CoatReading FULL = new CoatReading.OfColour(new Lab(34, 4, -44));
  private static final CoatReading WASH = new CoatReading.OfColour(new Lab(68, -18, -30));

  @TempDir Path folder;
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final PageModel model =
      new PageModel(
          session,
          PigmentLibraryReader.read(),
          () -> TODAY,
          Sessions.AT_ONCE,
          Sessions.AT_ONCE,
          Sessions::fail);

  @Test
  void thePageFollowsThePaintPickedOnShelfAndInWells() {
    assertThat(page().paint().id()).isEqualTo("yellow");
    session.selectionProperty().set(new Selection.OfPaint("red"));
    assertThat(page().paint().id()).isEqualTo("red");
    session.selectionProperty().set(new Selection.OfWell("w2"));
    assertThat(page().paint().id()).isEqualTo("blue");
    session.selectionProperty().set(Selection.NOTHING);
    assertThat(page().paint().id()).isEqualTo("blue");
    session.perform(new Edit.RemovePaint("blue"));
    assertThat(page().paint().id()).isEqualTo("yellow");
  }

  @Test
  void typedSwatchesAreLearntFromAndThereIsAWayBack() {
    model.choose("blue");
    Paint before = page().paint();
    model.keepTyped(CoatRole.FULL, FULL, OptionalDouble.empty());
    model.keepTyped(CoatRole.WASH, WASH, OptionalDouble.empty());
    assertThat(page().coats()).hasSize(2).allSatisfy(line -> assertThat(line.fit()).isPresent());
    assertThat(page().paint().measured()).isEqualTo(before.measured());

    model.learn();
    assertThat(page().optics().source()).isEqualTo(OpticsSource.SWATCHES);
    assertThat(page().origin().reason()).isEqualTo(OpticsOrigin.Reason.FITTED);
    assertThat(page().coats().get(0).fit().orElseThrow().ciede2000()).isLessThan(3);
    assertThat(model.remarkProperty().get()).contains("2 swatches").doesNotContain("sheen");

    model.goBack(0);
    assertThat(page().paint().measured()).isEqualTo(before.measured());
    assertThat(page().coats()).hasSize(2);
    session.undo();
    assertThat(page().optics().source()).isEqualTo(OpticsSource.SWATCHES);
  }

  /** What was said of a step is no longer true once it is undone. */
  @Test
  void theRemarkGoesWithTheStepItTellsOf() {
    model.choose("blue");
    model.keepTyped(CoatRole.FULL, FULL, OptionalDouble.empty());
    assertThat(model.remarkProperty().get()).contains("1 swatch kept");

    session.undo();

    assertThat(model.remarkProperty().get()).isEmpty();
  }

  /** The four usual swatches are typed one after the other. */
  @Test
  void theNextSwatchToTypeIsTheOneThatIsMissing() {
    List<CoatRole> roles = List.of(CoatRole.FULL, CoatRole.WASH, CoatRole.TINT, CoatRole.ON_BLACK);
    model.choose("blue");
    for (CoatRole role : roles) {
      assertThat(CoatRole.next(roles, model.coats())).isEqualTo(role);
      model.keepTyped(role, FULL, OptionalDouble.empty());
    }
    assertThat(CoatRole.next(roles, model.coats())).isEqualTo(CoatRole.FULL);
  }

  @Test
  void aSwatchDarkerThanAMattCoatIsToldOf() {
    model.choose("blue");
    model.keepTyped(
        CoatRole.FULL, new CoatReading.OfColour(new Lab(16, 3, -8)), OptionalDouble.empty());
    model.keepTyped(CoatRole.WASH, WASH, OptionalDouble.empty());

    model.learn();

    assertThat(model.remarkProperty().get())
        .contains("as dark as a matt coat can be (L* 20.0) or darker")
        .contains("taken to dry with a sheen");
    assertThat(PaintPageWords.sheen(page().optics().gloss()))
        .startsWith("Taken to dry with a sheen")
        .endsWith("a matt one 3 %.");
    assertThat(PaintPageWords.sheen(0)).isEmpty();
    assertThat(page().coats().get(0).coat().dry().lab()).isEqualTo(new Lab(16, 3, -8));
  }

  /**
   * Coats of one paint in four loads by Beer's law over the paper, of which one is noted double.
   */
  @Test
  void aLoadNotedWrongIsToldWithTheOneThatFitsAndTakenInOneStep() {
    model.choose("blue");
    double[] painted = {0.1, 0.25, 0.6, 1};
    double[] noted = {0.1, 0.5, 0.6, 1};
    for (int i = 0; i < painted.length; i++) {
      double load = painted[i];
      Spectrum seen =
          Spectrum.ofWavelengths(
              nm -> 0.03 + 0.8 * Math.exp(-3 * load * Math.exp(-Math.pow((nm - 610) / 70.0, 2))));
      model.keepTyped(CoatRole.COAT, new CoatReading.OfSpectrum(seen), OptionalDouble.of(noted[i]));
    }
    assertThat(page().coats().get(1).coat().load()).hasValue(0.5);

    model.learn();
    assertThat(model.remarkProperty().get())
        .contains("Look at this load again: coat of load 0.50.")
        .contains("looks like a load of 0.2")
        .doesNotContain("Look at this coat again");
    Kit doubted = session.kit();

    model.takeLoad();
    assertThat(page().coats().get(1).coat().load().orElseThrow()).isBetween(0.2, 0.3);
    assertThat(model.doubtedProperty().get()).isEmpty();
    assertThat(model.remarkProperty().get()).startsWith("Learnt from 4 swatches");
    session.undo();
    assertThat(session.kit()).isEqualTo(doubted);
    model.takeLoad();
    assertThat(session.kit()).isEqualTo(doubted);
  }

  @Test
  void aSwatchCanBeTakenOffAgain() {
    model.keepTyped(CoatRole.FULL, FULL, OptionalDouble.empty());
    model.remove(page().coats().get(0).coat().id());
    assertThat(page().coats()).isEmpty();
  }

  @Test
  void nothingLearntIsSaidWithTheReason() {
    model.keepTyped(CoatRole.FULL, FULL, OptionalDouble.empty());
    model.keepTyped(CoatRole.WASH, FULL, OptionalDouble.empty());
    Paint before = page().paint();
    model.learn();
    assertThat(model.remarkProperty().get()).contains("same colour");
    assertThat(page().paint()).isEqualTo(before);
  }

  @Test
  void rowsOfAFileAreKeptOnThePaperOfTheFile() throws Exception {
    Path file = folder.resolve("blue.csv");
    Files.writeString(
        file,
        "sample,LAB_L,LAB_A,LAB_B\nbare paper,94,0,3\nfull,34,4,-44\nblue 1:1 white,60,-5,-35\n");
    List<ReadingFile> opened = new ArrayList<>();
    model.open(file, opened::add);
    assertThat(opened).hasSize(1);
    List<ChosenRow> rows = new ReadingsModel(opened.get(0)).chosen();
    assertThat(rows)
        .extracting(ChosenRow::role)
        .containsExactly(CoatRole.PAPER, CoatRole.FULL, CoatRole.TINT);
    model.keepRead(rows, "blue.csv");
    assertThat(page().coats())
        .hasSize(2)
        .allSatisfy(
            line -> {
              assertThat(line.coat().source()).isEqualTo("blue.csv");
              assertThat(line.coat().date()).contains(TODAY);
              assertThat(line.coat().ground().orElseThrow().lab()).isEqualTo(new Lab(94, 0, 3));
            });
    assertThat(page().coats().get(1).coat().mixedWith()).isPresent();
  }

  /** Amounts in any unit count against full strength, loads as they stand; 0 is bare paper. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "load, 0.8, 0.2, 0.4, 0.8, 0.2, 0.4",
    "ml, 0.4, 0.1, 0.2, 1, 0.25, 0.5",
    "Amount (mg), 200, 50, '', 1, 0.25, 0"
  })
  void amountsOfAFileAreNotedAsLoads(
      String head,
      String full,
      String wash,
      String thin,
      double fullLoad,
      double washLoad,
      double thinLoad)
      throws Exception {
    keepRead(
        """
        sample,%s,LAB_L,LAB_A,LAB_B
        first,0,94,0,3
        full,%s,34,4,-44
        wash,%s,75,-8,-25
        thin,%s,60,-5,-35
        """
            .formatted(head, full, wash, thin));

    assertThat(page().coats())
        .extracting(line -> line.coat().load().orElse(0))
        .containsExactly(fullLoad, washLoad, thinLoad);
    assertThat(page().coats().get(0).coat().ground()).isPresent();
  }

  @Test
  void anAmountThatNoBrushLaysDownIsNotNotedAndToldOf() throws Exception {
    keepRead("sample,ml,LAB_L,LAB_A,LAB_B\nfull,0.3,34,4,-44\nwash,75,75,-8,-25\n");

    assertThat(page().coats().get(1).coat().load()).isEmpty();
    assertThat(model.remarkProperty().get())
        .contains("2 swatches kept")
        .contains("1 has more than 20 times the paint of a full coat");
  }

  @Test
  void anAmountBelowNothingLeavesItsRowOut() throws Exception {
    ReadingFile file =
        ReadingFile.read(
            "sample,ml,LAB_L,LAB_A,LAB_B\nfull,-1,34,4,-44\nwash,1,75,-8,-25\n"
                .getBytes(StandardCharsets.UTF_8));

    assertThat(new ReadingsModel(file).chosen()).hasSize(1);
    assertThat(PaintPageWords.fault(file.plan(file.guess()).rows().get(0)))
        .contains("full, line 2, column ml: -1 is below 0.");
  }

  private void keepRead(String text) throws Exception {
    Path file = folder.resolve("blue.csv");
    Files.writeString(file, text);
    List<ReadingFile> opened = new ArrayList<>();
    model.open(file, opened::add);
    model.keepRead(new ReadingsModel(opened.get(0)).chosen(), "blue.csv");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "nothing, '', no table",
    "a cell too few, 'sample,LAB_L,LAB_A,LAB_B\nfull,34,-44', 'line 2: 3 cells where there are 4'",
    "a column twice, 'LAB_L,LAB_A,LAB_A\n34,4,-44', 'the column “LAB_A” twice'",
    "a quote that never ends, 'sample,LAB_L\n\"full,34', ends at line 2"
  })
  void aFileThatIsNoTableIsRefusedWithTheReasonAndKeepsNothing(
      String what, String text, String said) throws Exception {
    Path file = folder.resolve("broken.csv");
    Files.writeString(file, text);
    List<ReadingFile> opened = new ArrayList<>();
    model.open(file, opened::add);
    assertThat(opened).isEmpty();
    assertThat(model.remarkProperty().get()).contains("broken.csv").contains(said);
    assertThat(page().coats()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "#ff0000, 53.24, 80.09, 67.20",
    "00ff00, 87.73, -86.18, 83.18",
    "'42 18 -50', 42, 18, -50",
    "'42,5; 18; -50', 42.5, 18, -50",
    "'42, 18, -50', 42, 18, -50"
  })
  void coloursAreReadAsPeopleTypeThem(String typed, double l, double a, double b) {
    // the corners of sRGB: IEC 61966-2-1, values of common colour tables under D65
    Lab lab = TypedColour.read(typed).orElseThrow();
    assertThat(lab.l()).isCloseTo(l, org.assertj.core.api.Assertions.within(0.05));
    assertThat(lab.a()).isCloseTo(a, org.assertj.core.api.Assertions.within(0.1));
    assertThat(lab.b()).isCloseTo(b, org.assertj.core.api.Assertions.within(0.1));
  }

  @ParameterizedTest
  @CsvSource({"red", "#ff00", "'120 0 0'", "'50 0'", "'0 0 0'", "'50 900 0'", "''"})
  void whatIsNoColourIsNone(String typed) {
    assertThat(TypedColour.read(typed)).isEmpty();
  }

  @Test
  void aRoleMakesTheCoatItNames() {
    PaintedCoat line = CoatRole.ON_BLACK.coat("a", FULL).orElseThrow();
    assertThat(line.over()).isEqualTo(PaintedCoat.Ground.BLACK_LINE);
    assertThat(CoatRole.PAPER.coat("a", FULL)).isEmpty();
    assertThat(CoatRole.guess("thin wash")).isEqualTo(CoatRole.WASH);
    assertThat(CoatRole.guess("with black")).isEqualTo(CoatRole.TONE);
    assertThat(CoatRole.guess("7")).isEqualTo(CoatRole.COAT);
  }

  private PaintPage page() {
    return model.pageProperty().get().orElseThrow();
  }
}
