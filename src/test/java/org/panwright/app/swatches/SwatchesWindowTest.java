package org.panwright.app.swatches;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.paint.Paint;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.Sheets;
import org.panwright.swatch.sheet.SimulatedCamera;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The view of swatches with a photo of a painted sheet in it. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class SwatchesWindowTest {
  @TempDir Path folder;
  private Desks desks;
  private SwatchesView view;

  @Start
  void start(Stage stage) {
    desks = new Desks(Desks.kit());
    view = desks.showSheets(stage);
  }

  @Test
  void aPhotoIsReadAndKeptForItsPaints(FxRobot robot) throws Exception {
    Path photo =
        SimulatedCamera.phone(1200, 1600)
            .save(Sheets.painted(SheetFormat.A4), folder.resolve("photo.jpg"));

    robot.interact(() -> view.open(photo, () -> {}));

    assertThat(robot.lookup(".row-card").queryAll()).hasSize(8);
    robot.clickOn("Keep for these paints");

    Paint blue = desks.session.kit().shelf().find("blue").orElseThrow();
    assertThat(blue.measured()).isPresent();
    assertThat(blue.swatchbook().coats()).hasSizeGreaterThanOrEqualTo(3);
  }

  @Test
  void aCornerPickedByItsNumberFollowsTheArrows(FxRobot robot) throws Exception {
    Path photo =
        SimulatedCamera.scanner(700, 990)
            .save(Sheets.painted(SheetFormat.A4), folder.resolve("scan.jpg"));
    robot.interact(() -> view.open(photo, () -> {}));
    Point before = desks.sheet.corners().placesProperty().get().get(2);

    // Not by the robot: here the sheet is read while a key is down, and a real keyboard repeats it.
    Node desk = robot.lookup(".picture-desk").query();
    for (KeyCode key : List.of(KeyCode.DIGIT3, KeyCode.RIGHT, KeyCode.RIGHT, KeyCode.DOWN)) {
      robot.interact(() -> Event.fireEvent(desk, pressed(key)));
    }

    assertThat(desks.sheet.corners().placesProperty().get().get(2)).isEqualTo(before.plus(2, 1));
  }

  @Test
  void aFileThatIsNoPictureIsToldAndNothingChanges(FxRobot robot) throws Exception {
    Path text = java.nio.file.Files.writeString(folder.resolve("notes.png"), "not a picture");

    robot.interact(() -> view.open(text, () -> {}));

    assertThat(robot.lookup("#picture-problem").queryLabeled().getText())
        .contains("notes.png is no picture");
    assertThat(desks.pictures.pictureProperty().get()).isEqualTo(Optional.empty());
  }

  private static KeyEvent pressed(KeyCode key) {
    return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", key, false, false, false, false);
  }
}
