package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.kit.Edit;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;
import org.panwright.words.BoxEditorWords;
import org.panwright.words.DialogWords;
import org.panwright.words.FileWords;
import org.panwright.words.PaintEditorWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class WorkbenchWindowTest {
  private Path folder;
  private Path file;
  private Stage stage;
  private OpenWindow window;

  @Start
  void open(Stage stage) throws Exception {
    this.stage = stage;
    folder = Files.createTempDirectory("panwright-window");
    file = folder.resolve("sea.kit.json");
    new KitFiles(new PigmentLibrary(List.of()))
        .saveAs(OpenedKit.unsaved(ThreePaintKit.kit()), ThreePaintKit.kit(), file);
    window = new OpenWindow(stage, folder, ThreePaintKit.kit(), Optional.of(file));
  }

  /** Reads the pigments before the clock of the first window starts. */
  @BeforeAll
  static void readTheLibrary() {
    assertThat(OpenWindow.LIBRARY.pigments()).isNotEmpty();
  }

  @AfterEach
  void close() {
    window.close();
  }

  @Test
  void theKitAskedForIsShownWithItsFile(FxRobot robot) {
    assertThat(stage.getTitle()).contains("test kit").contains("sea.kit.json");
    assertThat(name(robot)).isEqualTo("test kit");
  }

  @Test
  void anEditMarksTheKitAndUndoTakesTheMarkAway(FxRobot robot) {
    robot.interact(() -> window.session().perform(new Edit.RenameKit("sea")));
    assertThat(name(robot)).isEqualTo("● sea");
    press(robot, KeyCode.Z);
    assertThat(name(robot)).isEqualTo("test kit");
  }

  @Test
  void undoReachesTheKitFromAFieldWithNothingTyped(FxRobot robot) {
    robot.clickOn(".text-field");
    robot.interact(() -> window.session().perform(new Edit.RenameKit("sea")));
    press(robot, KeyCode.Z);
    assertThat(name(robot)).isEqualTo("test kit");
  }

  @Test
  void undoInAFieldTakesBackTheTyping(FxRobot robot) {
    robot.interact(() -> window.session().perform(new Edit.RenameKit("sea")));
    robot.clickOn(".text-field").write("blue");
    press(robot, KeyCode.Z);
    assertThat(name(robot)).isEqualTo("● sea");
  }

  @Test
  void savingWritesTheFileAndTakesTheMarkAway(FxRobot robot) throws Exception {
    robot.interact(() -> window.session().perform(new Edit.RenameKit("sea")));
    press(robot, KeyCode.S);
    until(() -> name(robot).equals("sea"));
    assertThat(Files.readString(file)).contains("\"sea\"");
  }

  @Test
  void closingWithChangesAsksAndKeepsWorkingIfTold(FxRobot robot) {
    robot.interact(() -> window.session().perform(new Edit.RenameKit("sea")));
    askToClose();
    clickButton(robot, FileWords.STAY);
    assertThat(stage.isShowing()).isTrue();
    assertThat(name(robot)).isEqualTo("● sea");
  }

  @Test
  void closingWithChangesSavesThemIfTold(FxRobot robot) throws Exception {
    robot.interact(() -> window.session().perform(new Edit.RenameKit("sea")));
    askToClose();
    clickButton(robot, FileWords.SAVE_FIRST);
    until(() -> !stage.isShowing());
    assertThat(Files.readString(file)).contains("\"sea\"");
    assertThat(window.recent()).containsExactly(file.toAbsolutePath());
  }

  @Test
  void closingWithoutChangesAsksNothing() {
    askToClose();
    until(() -> !stage.isShowing());
    assertThat(Window.getWindows()).isEmpty();
  }

  @Test
  void aPaintIsAddedByKeysAlone(FxRobot robot) {
    press(robot, KeyCode.P);
    until(() -> robot.lookup("#paint-name").tryQuery().filter(Node::isFocused).isPresent());
    assertThat(button(robot, PaintEditorWords.ADD).isDisabled()).isTrue();
    robot.targetWindow(robot.lookup("#paint-name").query().getScene().getWindow());
    robot.write("Sea blue");
    robot.push(KeyCode.TAB).push(KeyCode.TAB).push(KeyCode.TAB);
    robot.write("pb29").push(KeyCode.ENTER);
    assertThat(button(robot, PaintEditorWords.ADD).isDisabled()).isFalse();
    robot.push(KeyCode.CONTROL, KeyCode.ENTER);
    until(() -> window.session().kit().shelf().paints().size() == 4);
    until(() -> robot.lookup("#paint-name").tryQuery().filter(Node::isFocused).isPresent());
    robot.push(KeyCode.TAB).push(KeyCode.TAB).push(KeyCode.TAB);
    robot.write("pg7").push(KeyCode.ENTER).push(KeyCode.ENTER);
    until(() -> window.session().kit().shelf().paints().size() == 5);
    assertThat(window.session().kit().shelf().paints().get(4).codes()).isEqualTo("PG7");
    Paint added = window.session().kit().shelf().paints().get(3);
    assertThat(added.name()).isEqualTo("Sea blue");
    assertThat(added.codes()).isEqualTo("PB29");
  }

  @Test
  void leavingTheBoxEditorChangesNothing(FxRobot robot) {
    press(robot, KeyCode.B);
    until(() -> robot.lookup(BoxEditorWords.ADD_WELL).tryQuery().isPresent());
    robot.clickOn(BoxEditorWords.ADD_WELL);
    clickButton(robot, DialogWords.LEAVE);
    assertThat(window.session().kit().boxes()).hasSize(1);
  }

  @Test
  void aBoxIsAddedAndUndone(FxRobot robot) {
    press(robot, KeyCode.B);
    until(() -> robot.lookup(BoxEditorWords.ADD).tryQuery().isPresent());
    clickButton(robot, BoxEditorWords.ADD);
    until(() -> window.session().kit().boxes().size() == 2);
    press(robot, KeyCode.Z);
    assertThat(window.session().kit().boxes()).hasSize(1);
  }

  /** Not waited for: the question that may come up keeps the call from returning. */
  private void askToClose() {
    Platform.runLater(
        () -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
  }

  private static void press(FxRobot robot, KeyCode key) {
    robot.push(new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static void clickButton(FxRobot robot, String label) {
    until(() -> robot.lookup(label).tryQuery().isPresent());
    robot.clickOn(button(robot, label));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private static Button button(FxRobot robot, String label) {
    return robot.lookup(label).queryButton();
  }

  private static String name(FxRobot robot) {
    return robot.lookup(".kit-name").<Labeled>query().getText();
  }

  private static void until(java.util.concurrent.Callable<Boolean> holds) {
    try {
      WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, holds);
    } catch (java.util.concurrent.TimeoutException late) {
      throw new AssertionError("did not happen within 20 seconds", late);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }
}
