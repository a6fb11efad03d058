package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import javafx.animation.AnimationTimer;
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
  void worksInOrderOnceTheWindowIsSeen(FxRobot robot) throws Exception {
    FrameByFrame frames = new FrameByFrame();
    robot.interact(() -> order(frames, "grid", "ring"));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> done.size() == 2);
    robot.interact(() -> order(frames, "list", "table"));
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> done.size() == 4);
    assertThat(done).containsExactly("grid", "ring", "list", "table");
    assertThat(frames.isDone()).isTrue();
  }

  @Test
  void leavesTheRestOfLongWorkToAnotherFrame(FxRobot robot) throws Exception {
    FrameByFrame frames = new FrameByFrame();
    List<Long> frameOfPiece = new CopyOnWriteArrayList<>();
    AtomicLong frame = new AtomicLong();
    robot.interact(
        () -> {
          counting(frame).start();
          for (int i = 0; i < 2; i++) {
            frames.execute(
                () -> {
                  frameOfPiece.add(frame.get());
                  LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(30));
                });
          }
        });
    WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> frameOfPiece.size() == 2);
    assertThat(frameOfPiece.get(1)).isGreaterThan(frameOfPiece.get(0));
  }

  private void order(FrameByFrame frames, String... pieces) {
    int before = done.size();
    for (String piece : pieces) {
      frames.execute(() -> done.add(piece));
    }
    assertThat(done).hasSize(before);
    assertThat(frames.isDone()).isFalse();
  }

  private static AnimationTimer counting(AtomicLong frame) {
    return new AnimationTimer() {
      @Override
      public void handle(long now) {
        frame.incrementAndGet();
      }
    };
  }
}
