package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class FrameByFrameTest {
  private final List<String> done = new CopyOnWriteArrayList<>();

  @Start
  void show(Stage stage) {
    stage.setScene(new Scene(new StackPane()));
    stage.show();
  }

  @Test
  void worksInOrderOnceTheWindowIsSeenAndAtOnceAfterwards(FxRobot robot) throws Exception {
    FrameByFrame frames = new FrameByFrame();
    robot.interact(
        () -> {
          frames.execute(() -> done.add("grid"));
          frames.execute(() -> done.add("ring"));
          assertThat(done).isEmpty();
        });
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> done.size() == 2);
    robot.interact(
        () -> {
          frames.execute(() -> done.add("later"));
          assertThat(done).containsExactly("grid", "ring", "later");
        });
  }
}
