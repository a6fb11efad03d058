package org.panwright.app.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.theme.Theme;
import org.panwright.colour.Lab;
import org.panwright.paint.CoatReading;
import org.panwright.paint.OpticsSource;
import org.panwright.store.PigmentLibraryReader;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The page of a paint with swatches on it. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class PaintPageWindowTest {
  private Session session;

  @Start
  void start(Stage stage) {
    session = Sessions.on(ThreePaintKit.kit());
    PageModel model =
        new PageModel(
            session,
            PigmentLibraryReader.read(),
            () -> LocalDate.of(2027, 5, 1),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    model.choose("blue");
    model.keepTyped(CoatRole.FULL, new CoatReading.OfColour(new Lab(34, 4, -44)));
    model.keepTyped(CoatRole.WASH, new CoatReading.OfColour(new Lab(68, -18, -30)));
    Scene scene = new Scene(new PageView(model, new ScriptedDialogs(), Runnable::run), 1240, 760);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aPainterLearnsAPaintAndGoesBack(FxRobot robot) {
    assertThat(robot.lookup(".coat-row").queryAll()).hasSize(2);
    robot.clickOn("Learn from swatches");
    assertThat(source()).isEqualTo(OpticsSource.SWATCHES);
    robot.clickOn("Go back to this");
    assertThat(source()).isEqualTo(OpticsSource.SPECTRA);
    robot.clickOn("Remove");
    assertThat(robot.lookup(".coat-row").queryAll()).hasSize(1);
  }

  private OpticsSource source() {
    return session.kit().shelf().find("blue").orElseThrow().measured().orElseThrow().source();
  }
}
