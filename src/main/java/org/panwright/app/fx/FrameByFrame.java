package org.panwright.app.fx;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;
import javafx.animation.AnimationTimer;

/**
 * Does one piece of work a frame, in the order asked for, beginning once the first frame is on the
 * screen; when there is nothing left it does work at once. For the JavaFX thread.
 *
 * <p>Pieces of the window that can come a moment later are built by it, so that no frame waits for
 * all of them.
 */
public final class FrameByFrame implements Executor {
  /** The pulse after which the first frame is surely on the screen. */
  private static final int FIRST_SHOWN = 3;

  private final Queue<Runnable> waiting = new ArrayDeque<>();
  private int pulses;
  private boolean isDone;
  private AnimationTimer timer;

  @Override
  public void execute(Runnable work) {
    if (isDone) {
      work.run();
      return;
    }
    waiting.add(work);
    if (timer == null) {
      timer =
          new AnimationTimer() {
            @Override
            public void handle(long now) {
              beat();
            }
          };
    }
    timer.start();
  }

  private void beat() {
    pulses++;
    if (pulses < FIRST_SHOWN) {
      return;
    }
    waiting.remove().run();
    isDone = waiting.isEmpty();
    if (isDone) {
      timer.stop();
    }
  }
}
