package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.kit.Kit;
import org.panwright.store.DemoKit;
import org.panwright.words.FillViewWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The view of tubes and fillings in the window. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class FillWindowTest {
  private OpenWindow window;

  @Start
  void open(Stage stage) throws Exception {
    Path folder = Files.createTempDirectory("panwright-fill");
    Kit demo = DemoKit.read(OpenWindow.LIBRARY);
    window = new OpenWindow(stage, folder, demo, Optional.empty());
    window.workbench.showPlace(FillViewWords.FILL);
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
  void theFillPlanIsShownAndCarriedOut(FxRobot robot) {
    TableView<?> plan = robot.lookup(".text-table").queryTableView();
    assertThat(plan.getItems()).isNotEmpty();
    int before = window.session().kit().stock().filled().size();
    robot.interact(() -> button(robot, FillViewWords.FILL_PICKED).fire());
    assertThat(window.session().kit().stock().filled()).hasSizeGreaterThan(before);
    robot.interact(() -> window.session().undo());
    assertThat(window.session().kit().stock().filled()).hasSize(before);
  }

  @Test
  void everyPartShowsItsTable(FxRobot robot) {
    for (String part :
        new String[] {FillViewWords.TUBES, FillViewWords.WHERE, FillViewWords.PANS}) {
      robot.interact(
          () ->
              robot
                  .lookup(node -> node instanceof ToggleButton b && b.getText().equals(part))
                  .queryAs(ToggleButton.class)
                  .fire());
      TableView<?> table = robot.lookup(".text-table").queryTableView();
      assertThat(table.getItems()).as(part).isNotEmpty();
    }
  }

  private static Button button(FxRobot robot, String text) {
    return robot
        .lookup(node -> node instanceof Button b && b.getText().equals(text))
        .queryAs(Button.class);
  }
}
