package org.panwright.app.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.analysis.judge.Judge;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.recipes.Wanted;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.PaperFormat;
import org.panwright.words.CompareWords;
import org.panwright.words.PaperViewWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class CompareWindowTest {
  private Session session;
  private CompareModel model;
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private int opened;

  @Start
  void open(Stage stage) {
    PigmentLibrary library = new PigmentLibrary(List.of());
    session = Sessions.on(ThreePaintKit.kit());
    session.perform(
        new Edit.AddLineup(
            new Lineup(
                "other",
                "the other",
                "box",
                Map.of(
                    "w1", new Filling("red", Fill.FULL), "w2", new Filling("blue", Fill.FULL)))));
    model =
        new CompareModel(
            session, new Judge(library), Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    CompareView view =
        new CompareView(
            model,
            new ComparedPage(
                model, PaperFormat.A4, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail),
            new ToneBook(library),
            dialogs,
            () -> {},
            () -> opened++,
            Runnable::run);
    Scene scene = new Scene(view, 1100, 640);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void bothBoxesAndWhatIsToBeMovedAreShown(FxRobot robot) {
    assertThat(robot.lookup(".box-drawing").queryAll()).hasSize(2);
    assertThat(robot.lookup("Put red into well 1.").tryQuery()).isPresent();
  }

  @Test
  void theSidesChangeByAButton(FxRobot robot) {
    robot.interact(() -> robot.lookup("⇄").<Button>query().fire());
    assertThat(model.firstProperty().get().orElseThrow().label()).isEqualTo("the other");
  }

  @Test
  void aPaintPressedOnOneSideIsMarkedOnBoth(FxRobot robot) {
    robot.interact(() -> session.selectionProperty().set(new Selection.OfPaint("blue")));
    PseudoClass related = PseudoClass.getPseudoClass("related");
    assertThat(robot.lookup(".well").<Node>queryAll())
        .filteredOn(well -> well.getPseudoClassStates().contains(related))
        .hasSize(2);
  }

  @Test
  void everyChoiceHasAName(FxRobot robot) {
    assertThat(robot.lookup(".combo-box").<ComboBox<?>>queryAll())
        .extracting(ComboBox::getAccessibleText)
        .contains(CompareWords.FIRST, CompareWords.SECOND, CompareWords.OUT, CompareWords.IN);
  }

  @Test
  void arrowKeysPickTheSameCellOnBothSidesAndSayWhatItHolds(FxRobot robot) {
    List<AlignedGrid> grids =
        List.copyOf(robot.lookup(".aligned-grid").queryAllAs(AlignedGrid.class));
    robot.interact(grids.get(1)::requestFocus);
    robot.type(KeyCode.DOWN, KeyCode.RIGHT);

    // Rows are blue, which is in both, then yellow, only in the first, and red, only in the second.
    assertThat(session.selectionProperty().get())
        .isEqualTo(new Selection.OfMix("blue", "yellow", AlignedCells.LEADING));
    assertThat(grids)
        .extracting(AlignedGrid::getAccessibleText)
        .allSatisfy(
            said ->
                assertThat(said)
                    .contains("blue 3 : 1 yellow, cream. two paints: ", "green, meas. ±")
                    .endsWith(CompareWords.NOT_IN_IT + "."));
  }

  @Test
  void enterOpensThePickedMix(FxRobot robot) {
    robot.interact(robot.lookup(".aligned-grid").query()::requestFocus);
    robot.type(KeyCode.ENTER);
    assertThat(opened).isZero();
    robot.type(KeyCode.RIGHT, KeyCode.ENTER);
    assertThat(opened).isEqualTo(1);
  }

  @Test
  void arrowKeysGoFromWellToWellAndEnterPicksOnBothSides(FxRobot robot) {
    Node first = robot.lookup(".well").query();
    robot.interact(first::requestFocus);
    robot.type(KeyCode.RIGHT, KeyCode.ENTER);
    assertThat(session.selectionProperty().get()).isEqualTo(new Selection.OfPaint("blue"));
  }

  @Test
  void theRingIsGoneRoundByKeysAndEnterPicksAColour(FxRobot robot) {
    robot.interact(robot.lookup(".compared-side .ring-canvas").query()::requestFocus);
    robot.type(KeyCode.UP, KeyCode.RIGHT, KeyCode.ENTER);
    assertThat(session.selectionProperty().get()).isEqualTo(Wanted.hue(0.12, 85));
    assertThat(robot.lookup(".compared-side .ring-canvas").query().getAccessibleText())
        .startsWith("Yellow, hue 85°, chroma 0.12. two paints reaches");
  }

  @Test
  void coloursOnlyOneSideMixesArePickedByKeys(FxRobot robot) {
    robot.interact(robot.lookup(".sample-strip").query()::requestFocus);
    robot.type(KeyCode.RIGHT);
    assertThat(session.selectionProperty().get())
        .isInstanceOfSatisfying(
            Selection.OfColour.class, colour -> assertThat(colour.name()).contains("only in"));
  }

  @Test
  void thePageIsLookedAtInPlaceOfBoxesAndGridsAndSaved(FxRobot robot, @TempDir Path folder)
      throws Exception {
    Path file = folder.resolve("two.pdf");
    dialogs.choose(file);
    robot.interact(() -> robot.lookup(CompareWords.PAGE).<ToggleButton>query().fire());
    assertThat(robot.lookup(".paper-sheet").queryAll()).hasSize(1);
    assertThat(robot.lookup(".aligned-grid").queryAll()).isEmpty();

    robot.interact(() -> robot.lookup(PaperViewWords.SAVE_PDF).<Button>query().fire());
    assertThat(new String(Files.readAllBytes(file), 0, 5, StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
    assertThat(robot.lookup(PaperViewWords.saved("two.pdf")).tryQuery()).isPresent();
  }
}
