package org.panwright.app.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.OptionalDouble;
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
import org.panwright.colour.Spectrum;
import org.panwright.paint.CoatReading;
import org.panwright.paint.OpticsSource;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.PaintPageWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The page of a paint with swatches on it. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class PaintPageWindowTest {
  private Session session;
  private PageModel model;

  @Start
  void start(Stage stage) {
    session = Sessions.on(ThreePaintKit.kit());
    model =
        new PageModel(
            session,
            PigmentLibraryReader.read(),
            () -> LocalDate.of(2027, 5, 1),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    model.choose("blue");
    model.keepTyped(
        CoatRole.FULL, new CoatReading.OfColour(new Lab(34, 4, -44)), OptionalDouble.empty());
    model.keepTyped(
        CoatRole.WASH, new CoatReading.OfColour(new Lab(68, -18, -30)), OptionalDouble.empty());
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

  /** Coats by Beer's law over the paper in the loads 0.1, 0.25, 0.6 and 1; the second noted 0.5. */
  @Test
  void aLoadNotedWrongIsMendedWithOneClick(FxRobot robot) {
    robot.interact(
        () -> {
          model.choose("yellow");
          double[] painted = {0.1, 0.25, 0.6, 1};
          double[] noted = {0.1, 0.5, 0.6, 1};
          for (int i = 0; i < painted.length; i++) {
            double load = painted[i];
            Spectrum seen =
                Spectrum.ofWavelengths(
                    nm ->
                        0.03
                            + 0.8
                                * Math.exp(-3 * load * Math.exp(-Math.pow((nm - 610) / 70.0, 2))));
            model.keepTyped(
                CoatRole.COAT, new CoatReading.OfSpectrum(seen), OptionalDouble.of(noted[i]));
          }
        });
    assertThat(robot.lookup("#take-load").queryButton().isVisible()).isFalse();
    robot.clickOn("Learn from swatches");
    assertThat(robot.lookup("#take-load").queryButton().getText()).startsWith("Note 0.2");
    robot.clickOn("#take-load");
    assertThat(robot.lookup("#take-load").queryButton().isVisible()).isFalse();
    double load =
        session
            .kit()
            .shelf()
            .find("yellow")
            .orElseThrow()
            .swatchbook()
            .coats()
            .get(1)
            .load()
            .orElseThrow();
    assertThat(load).isBetween(0.2, 0.3);
  }

  /** The keyboard goes to the chooser of a view just opened, whose page comes a moment later. */
  @Test
  void aPageStillOnItsWayIsNoEmptyShelf(FxRobot robot) {
    robot.interact(
        () -> {
          PageModel slow =
              new PageModel(
                  session,
                  PigmentLibraryReader.read(),
                  () -> LocalDate.of(2027, 5, 1),
                  work -> {},
                  Sessions.AT_ONCE,
                  Sessions::fail);
          PageView opening = new PageView(slow, new ScriptedDialogs(), Runnable::run);
          robot.lookup(".root").query().getScene().setRoot(opening);
        });

    assertThat(robot.lookup(".combo-box").queryComboBox().isDisabled()).isFalse();
    assertThat(robot.lookup(PaintPageWords.EMPTY_SHELF).tryQuery()).isEmpty();
  }

  private OpticsSource source() {
    return session.kit().shelf().find("blue").orElseThrow().measured().orElseThrow().source();
  }
}
