package org.panwright.app.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.choose.Chooser;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Lineup;
import org.panwright.kit.PaintWish;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.ChooseViewWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class ChooseWindowTest {
  private Session session;
  private ChooseModel model;

  @Start
  void open(Stage stage) {
    PigmentLibrary library = new PigmentLibrary(List.of());
    session = Sessions.on(ThreePaintKit.kit());
    model =
        new ChooseModel(
            session,
            new Chooser(library),
            new Arranger(library),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    Scene scene =
        new Scene(
            new ChooseView(
                model, new ToneBook(library), new ScriptedDialogs(), () -> {}, Runnable::run),
            1100,
            640);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void proposalsAppearAndOneBecomesALineup(FxRobot robot) {
    robot.interact(() -> robot.lookup(ChooseViewWords.PROPOSE).<Button>query().fire());
    assertThat(robot.lookup(".proposal").queryAll()).hasSize(1);
    robot.interact(() -> robot.lookup(ChooseViewWords.MAKE).<Button>query().fire());
    assertThat(session.lineup().orElseThrow().name()).isEqualTo("Proposed 1");
  }

  @Test
  void aContradictionIsToldInPlaceOfProposals(FxRobot robot) {
    robot.interact(
        () -> {
          model.ask(wishes -> wishes.withPlaces(9, 0));
          model.propose();
        });
    assertThat(robot.lookup(".proposal").queryAll()).isEmpty();
    assertThat(
            robot
                .lookup("9 paints are asked for and the shelf has 3. Ask for fewer, or add paints.")
                .tryQuery())
        .isPresent();
  }

  @Test
  void whatIsSaidOfAPaintByKeysIsKeptAndUndone(FxRobot robot) {
    ListView<Paint> list = robot.lookup(".wish-list").query();
    robot.interact(
        () -> {
          list.requestFocus();
          list.getSelectionModel().select(2);
        });
    robot.type(KeyCode.RIGHT, KeyCode.RIGHT);
    assertThat(session.lineup().flatMap(Lineup::wishes).orElseThrow().of("red"))
        .isEqualTo(PaintWish.NEVER);
    assertThat(said(robot)).contains("red: " + ChooseViewWords.NEVER);

    robot.interact(session::undo);
    assertThat(said(robot)).contains("red: " + ChooseViewWords.MUST);
  }

  @Test
  void aConditionChangedSinceIsTold(FxRobot robot) {
    robot.interact(model::propose);
    assertThat(robot.lookup(ChooseViewWords.CHANGED).query().isVisible()).isFalse();
    robot.interact(() -> robot.lookup(ChooseViewWords.NO_CADMIUM).<CheckBox>query().fire());
    assertThat(robot.lookup(ChooseViewWords.CHANGED).query().isVisible()).isTrue();
    assertThat(session.lineup().flatMap(Lineup::wishes).orElseThrow().rules().noCadmium()).isTrue();

    robot.interact(session::undo);
    assertThat(robot.lookup(ChooseViewWords.NO_CADMIUM).<CheckBox>query().isSelected()).isFalse();
    assertThat(robot.lookup(ChooseViewWords.CHANGED).query().isVisible()).isFalse();
  }

  private static List<String> said(FxRobot robot) {
    return robot.lookup(".wish-list .list-cell").<ListCell<?>>queryAll().stream()
        .map(ListCell::getAccessibleText)
        .toList();
  }
}
