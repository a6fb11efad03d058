package org.panwright.app.findings;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Lineup;
import org.panwright.words.FindingListWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Muting a finding by the keyboard, and having it told again. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class FindingsWindowTest {
  private Session session;

  @Start
  void open(Stage stage) {
    session = Sessions.on(ThreePaintKit.kit());
    Scene scene = new Scene(new FindingsView(new FindingsModel(session)), 420, 700);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aFindingIsMutedWithItsReasonAndToldAgain(FxRobot robot) {
    Button mute = robot.lookup(FindingListWords.MUTE).queryAllAs(Button.class).iterator().next();
    robot.interact(mute::fire);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("no roses here").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(lineup().muted()).hasSize(1);
    assertThat(lineup().muted().get(0).reason()).isEqualTo("no roses here");

    ToggleButton fold =
        robot.lookup(".fold > .toggle-button").queryAllAs(ToggleButton.class).iterator().next();
    assertThat(fold.getText()).contains(FindingListWords.muted(1));
    robot.interact(fold::fire);
    robot.clickOn(FindingListWords.TELL_AGAIN);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(lineup().muted()).isEmpty();
  }

  @Test
  void aFindingIsNotMutedWithoutAReason(FxRobot robot) {
    Button mute = robot.lookup(FindingListWords.MUTE).queryAllAs(Button.class).iterator().next();
    robot.interact(mute::fire);
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("  ").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(lineup().muted()).isEmpty();
    robot.clickOn(FindingListWords.KEEP);
    WaitForAsyncUtils.waitForFxEvents();
    assertThat(robot.lookup(FindingListWords.MUTE).queryAllAs(Button.class)).isNotEmpty();
  }

  private Lineup lineup() {
    return session.lineup().orElseThrow();
  }
}
