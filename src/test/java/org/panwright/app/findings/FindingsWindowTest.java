package org.panwright.app.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.Node;
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
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
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
  private Stage stage;

  @Start
  void open(Stage stage) {
    this.stage = stage;
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

  @Test
  void aReasonBeingTypedOutlivesANewJudgement(FxRobot robot) {
    FindingCard card = cards(robot).get(0);
    robot.interact(robot.from(card).lookup(FindingListWords.MUTE).queryButton()::fire);
    robot.write("no");
    robot.interact(() -> session.perform(new Edit.SetFill(lineup().id(), "w1", Fill.HALF)));
    WaitForAsyncUtils.waitForFxEvents();
    robot.write(" roses").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();

    assertThat(lineup().muted().get(0).reason()).isEqualTo("no roses");
  }

  @Test
  void theKeyboardStaysInTheListWhenAFindingIsCured(FxRobot robot) {
    FindingCard gap = card(robot, "hue-gap");
    Button cure = robot.from(gap).lookup(".button").nth(1).queryButton();
    robot.interact(cure::requestFocus);
    robot.interact(cure::fire);
    WaitForAsyncUtils.waitForFxEvents();

    assertThat(lineup().in("w3")).isPresent();
    assertThat(robot.lookup(".findings-list").query().isFocusWithin()).isTrue();
  }

  @Test
  void theKeyboardGoesToTheNextCardWhenOneIsMuted(FxRobot robot) {
    int before = cards(robot).size();
    assertThat(before).isGreaterThan(1);
    robot.interact(
        robot.from(cards(robot).get(0)).lookup(FindingListWords.MUTE).queryButton()::fire);
    robot.write("no roses").type(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();

    assertThat(cards(robot)).hasSize(before - 1);
    Node focused = stage.getScene().getFocusOwner();
    assertThat(cards(robot)).anyMatch(FindingCard::isFocusWithin);
    assertThat(((Button) focused).getText()).isEqualTo(FindingListWords.MUTE);
  }

  @Test
  void anotherLineupWithTheSameFindingsAsksForNoReason(FxRobot robot) {
    robot.interact(
        () -> {
          Lineup other = new Lineup("other", "other", "box", lineup().fillings());
          session.perform(new Edit.AddLineup(other));
        });
    robot.interact(
        robot.from(cards(robot).get(0)).lookup(FindingListWords.MUTE).queryButton()::fire);
    robot.interact(() -> session.look("other"));
    WaitForAsyncUtils.waitForFxEvents();

    assertThat(robot.lookup(".finding .text-field").queryAll()).isEmpty();
    assertThat(cards(robot)).isNotEmpty();
  }

  private static List<FindingCard> cards(FxRobot robot) {
    return robot.lookup(".finding").queryAllAs(FindingCard.class).stream().toList();
  }

  private static FindingCard card(FxRobot robot, String kind) {
    return cards(robot).stream().filter(c -> c.key().startsWith(kind)).findFirst().orElseThrow();
  }

  private Lineup lineup() {
    return session.lineup().orElseThrow();
  }
}
