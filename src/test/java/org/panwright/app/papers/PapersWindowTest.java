package org.panwright.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.analysis.judge.Judge;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.theme.Theme;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperKind;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.PaperViewWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class PapersWindowTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  @TempDir Path folder;
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private PapersModel model;

  @Start
  void open(Stage stage) {
    Session session =
        new Session(
            new Judge(LIBRARY),
            judging -> {},
            Sessions.AT_ONCE,
            Sessions::fail,
            DemoKit.read(LIBRARY));
    model =
        new PapersModel(
            session,
            LIBRARY,
            PaperMemory.none(PaperFormat.A4),
            () -> LocalDate.of(2026, 11, 25),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    Scene scene = new Scene(new PapersView(model, dialogs, Runnable::run), 1100, 640);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void theListIsTickedAndLockedWhileTheCardNeedsIt(FxRobot robot) {
    CheckBox list = robot.lookup(PaperViewWords.LIST).queryAs(CheckBox.class);

    assertThat(list.isSelected()).isTrue();
    assertThat(list.isDisabled()).isTrue();
  }

  @Test
  void arrowsPickAPaperAndTheSpaceBarTicksIt(FxRobot robot) {
    robot.clickOn(".paper-list");
    robot.interact(() -> model.kindProperty().set(PaperKind.KEY_CARD));
    robot.type(KeyCode.HOME).type(KeyCode.DOWN);
    assertThat(model.kindProperty().get()).isEqualTo(PaperKind.MIXING_CHART);

    robot.type(KeyCode.SPACE);
    assertThat(model.isTicked(PaperKind.MIXING_CHART)).isFalse();
  }

  @Test
  void allTickedGoIntoTheFileChosen(FxRobot robot) {
    Path file = folder.resolve("all.pdf");
    dialogs.choose(file);

    robot.clickOn(PaperViewWords.SAVE_ALL);

    assertThat(Files.exists(file)).isTrue();
    assertThat(robot.lookup(".paper-status").queryAllAs(Labeled.class))
        .extracting(Labeled::getText)
        .contains("Saved as all.pdf.");
  }
}
