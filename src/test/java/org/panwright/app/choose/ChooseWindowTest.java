package org.panwright.app.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.analysis.Arranger;
import org.panwright.analysis.Chooser;
import org.panwright.analysis.Conditions;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.theme.Theme;
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
            new ChooseView(model, new ToneBook(library), new ScriptedDialogs(), () -> {}),
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
          model.conditionsProperty().set(Conditions.of(9, 0));
          model.propose();
        });
    assertThat(robot.lookup(".proposal").queryAll()).isEmpty();
    assertThat(
            robot
                .lookup("9 paints are asked for and the shelf has 3. Ask for fewer, or add paints.")
                .tryQuery())
        .isPresent();
  }
}
