package org.panwright.app.outing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Outing;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.OutingWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class OutingWindowTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());

  @Start
  void show(Stage stage) {
    OutingModel model =
        new OutingModel(
            session,
            new PigmentLibrary(List.of()),
            () -> LocalDate.of(2027, 5, 1),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    model.add();
    stage.setScene(new Scene(new OutingView(model, Runnable::run), 1100, 640));
    stage.show();
  }

  @Test
  void aTickAndANoteReachTheKit(FxRobot robot) {
    robot.clickOn(tickOf(robot, "Clean water"));
    assertThat(item("water").ticked()).isTrue();
    robot.clickOn(field(robot, OutingWords.noteOn("Clean water"))).write("from the tap\n");
    assertThat(item("water").note()).isEqualTo("from the tap");
    robot.interact(session::undo);
    robot.interact(session::undo);
    assertThat(tickOf(robot, "Clean water").isSelected()).isFalse();
  }

  @Test
  void theFormEndsWhereItsPaneEnds(FxRobot robot) {
    OutingForm form = robot.lookup(node -> node instanceof OutingForm).queryAs(OutingForm.class);
    ScrollPane pane =
        robot
            .lookup(
                node ->
                    node instanceof ScrollPane scroll
                        && form.getParent().equals(scroll.getContent()))
            .queryAs(ScrollPane.class);
    assertThat(form.getWidth()).isLessThanOrEqualTo(pane.getViewportBounds().getWidth());
  }

  @Test
  void hoursTypedWithACommaChangeTheWater(FxRobot robot) {
    retype(robot, OutingWords.HOURS, "6,5\n");
    assertThat(outing().hours()).isEqualTo(6.5);
    // 6.5 · 30 + 3 · 20 = 255, up to 300
    assertThat(robot.lookup(".label").queryAllAs(Label.class))
        .extracting(Label::getText)
        .contains("300 ml");
  }

  @Test
  void anImpossibleDateStaysInItsFieldWithASentence(FxRobot robot) {
    retype(robot, OutingWords.DATE, "30.2.2027\n");
    assertThat(outing().date()).isEmpty();
    assertThat(field(robot, OutingWords.DATE).getText()).isEqualTo("30.2.2027");
    assertThat(robot.lookup(".field-problem").queryAllAs(Label.class))
        .anySatisfy(label -> assertThat(label.getText()).contains("30.2.2027"));
    retype(robot, OutingWords.DATE, "1.3.2020\n");
    assertThat(outing().date()).contains(LocalDate.of(2020, 3, 1));
    assertThat(field(robot, OutingWords.DATE).getText()).isEqualTo("2020-03-01");
  }

  @Test
  void whatCouldNotBeUsedDoesNotStayForAnotherOuting(FxRobot robot) {
    retype(robot, OutingWords.DATE, "soon\n");
    robot.clickOn(OutingWords.COPY);
    assertThat(session.kit().outings()).hasSize(2);
    assertThat(field(robot, OutingWords.DATE).getText()).isEmpty();
  }

  @Test
  void altAndAnArrowMoveAnEntryAndItKeepsTheKeyboard(FxRobot robot) {
    TextField card = field(robot, "Key card of the box");
    robot.clickOn(card).press(KeyCode.ALT).type(KeyCode.UP).release(KeyCode.ALT);
    assertThat(outing().checklist().orElseThrow().get(0).id()).isEqualTo("card");
    assertThat(card.isFocused()).isTrue();
  }

  private static void retype(FxRobot robot, String field, String text) {
    robot.interact(field(robot, field)::clear);
    robot.clickOn(field(robot, field)).write(text);
  }

  private static TextField field(FxRobot robot, String name) {
    return robot
        .lookup(node -> node instanceof TextField f && name.equals(f.getAccessibleText()))
        .queryAs(TextField.class);
  }

  private static CheckBox tickOf(FxRobot robot, String item) {
    return robot
        .lookup(node -> node instanceof CheckBox box && item.equals(box.getAccessibleText()))
        .queryAs(CheckBox.class);
  }

  private Outing outing() {
    return session.kit().outings().get(0);
  }

  private CheckItem item(String id) {
    return outing().checklist().orElseThrow().stream()
        .filter(item -> item.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
