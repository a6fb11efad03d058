package org.panwright.app.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.analysis.Judge;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.CompareWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class CompareWindowTest {
  private Session session;
  private CompareModel model;

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
            session,
            new Judge(library),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    CompareView view =
        new CompareView(model, new ToneBook(library), new ScriptedDialogs(), () -> {});
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
    robot.interact(
        () -> session.selectionProperty().set(new org.panwright.app.Selection.OfPaint("blue")));
    PseudoClass related = PseudoClass.getPseudoClass("related");
    assertThat(robot.lookup(".well").<javafx.scene.Node>queryAll())
        .filteredOn(well -> well.getPseudoClassStates().contains(related))
        .hasSize(2);
  }

  @Test
  void everyChoiceHasAName(FxRobot robot) {
    assertThat(robot.lookup(".combo-box").<ComboBox<?>>queryAll())
        .extracting(ComboBox::getAccessibleText)
        .contains(CompareWords.FIRST, CompareWords.SECOND, CompareWords.OUT, CompareWords.IN);
  }
}
