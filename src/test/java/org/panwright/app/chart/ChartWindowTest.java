package org.panwright.app.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Sessions;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.swatches.SwatchesView;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Kit;
import org.panwright.swatch.coat.PaintLoad;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A hand-painted chart with a dirty cell, read and kept in the view. */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class ChartWindowTest {
  @TempDir Path folder;
  private HandPainted desk;
  private SwatchesView view;
  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private boolean slow;

  @Start
  void start(Stage stage) {
    desk = new HandPainted(Sessions.AT_ONCE, this::learn);
    view =
        new SwatchesView(
            desk.pictures,
            List.of(new ChartSide(desk.chart)),
            new ScriptedDialogs(),
            Runnable::run);
    Scene scene = new Scene(view, 1240, 760);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
  }

  @Test
  void aCellIsLeftOutByKeysAndTheRestKept(FxRobot robot) {
    Map<List<Integer>, List<PaintLoad>> cells = HandPainted.CHARTS.truth();
    Path photo = HandPainted.save(cells, folder.resolve("chart.jpg"));
    robot.interact(() -> view.open(photo, () -> {}));
    robot.interact(desk::placeCorners);
    assertThat(robot.lookup("All 16 cells agree.").tryQuery()).isPresent();

    robot.interact(() -> robot.lookup(".chart-canvas").query().requestFocus());
    robot.type(KeyCode.DOWN, KeyCode.RIGHT, KeyCode.SPACE);
    assertThat(desk.chart.cursor().picked().orElseThrow().isAt(1, 1)).isTrue();
    assertThat(desk.chart.cursor().picked().orElseThrow().kept()).isFalse();
    robot.clickOn("Learn from these cells");

    assertThat(desk.session.kit().shelf().find("rose").orElseThrow().swatchbook().coats())
        .hasSizeGreaterThan(1)
        .allMatch(coat -> coat.mixedWith().isPresent());
    assertThat(robot.lookup(".label").queryAllAs(javafx.scene.control.Label.class))
        .anyMatch(label -> label.getText().startsWith("4 paints learnt from "));
  }

  @Test
  void learningThatTakesLongIsShownAndCancelled(FxRobot robot) {
    slow = true;
    Path photo = HandPainted.save(HandPainted.CHARTS.truth(), folder.resolve("chart.jpg"));
    robot.interact(() -> view.open(photo, () -> {}));
    robot.interact(desk::placeCorners);
    Kit before = desk.session.kit();
    assertThat(robot.lookup("Cancel").tryQuery()).map(Node::isVisible).hasValue(false);

    robot.clickOn("Learn from these cells");
    assertThat(robot.lookup("The paints learn from the cells…").query().isVisible()).isTrue();
    assertThat(robot.lookup("#work-progress").query().isVisible()).isTrue();
    robot.clickOn("Cancel");
    robot.interact(() -> waiting.forEach(Runnable::run));

    assertThat(desk.session.kit()).isEqualTo(before);
    assertThat(robot.lookup("Cancelled: nothing was learnt.").query().isVisible()).isTrue();
    assertThat(robot.lookup("#work-progress").query().isVisible()).isFalse();
    assertThat(robot.lookup("Learn from these cells").query().isDisabled()).isFalse();
  }

  private void learn(Runnable task) {
    if (slow) {
      waiting.add(task);
    } else {
      task.run();
    }
  }
}
