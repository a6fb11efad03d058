package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Tips that are made late, and columns that remember their height. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class LateTipWindowTest {
  private final String[] words = {"first"};
  private Label tipped;
  private Label sentence;
  private SteadyColumn column;

  @Start
  void open(Stage stage) {
    tipped = new Label("point here");
    LateTip.on(tipped, () -> words[0]);
    sentence = Sentence.of("short");
    column = new SteadyColumn();
    column.getChildren().setAll(sentence);
    // The window may have another test's size, so the width that breaks the text is the column's.
    column.setMaxWidth(180);
    stage.setScene(new Scene(new VBox(tipped, column), 200, 300));
    stage.show();
  }

  @Test
  void theTipComesWithThePointerAndSaysWhatIsTrueThen(FxRobot robot) throws TimeoutException {
    assertThat(tips()).isEmpty();
    words[0] = "second";
    robot.moveTo(tipped).moveBy(2, 1);
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> !tips().isEmpty());

    assertThat(tips()).containsExactly("second");
  }

  @Test
  void aColumnGrowsAndShrinksWithItsText(FxRobot robot) throws TimeoutException {
    double before = column.getHeight();
    robot.interact(
        () -> sentence.setText("a sentence that is much too long for one line ".repeat(3)));
    untilLaidOut(() -> column.getHeight() > 2 * before);

    robot.interact(() -> sentence.setText("short"));
    untilLaidOut(() -> column.getHeight() == before);
  }

  /** Layout comes with a pulse, which is not among the events there are to wait for. */
  private static void untilLaidOut(Callable<Boolean> condition) throws TimeoutException {
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, condition);
  }

  private static List<String> tips() {
    return Window.getWindows().stream()
        .filter(Tooltip.class::isInstance)
        .map(tip -> ((Tooltip) tip).getText())
        .toList();
  }
}
