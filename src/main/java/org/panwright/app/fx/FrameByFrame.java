package org.panwright.app.fx;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;
import javafx.animation.AnimationTimer;

/**
 * Does pieces of work in the order asked for, as many in a frame as leave room for the toolkit to
 * style and lay out what they built. It begins once the first frame is on the screen; later work
 * begins in the frame after the one that shows what is there when it is asked for. For the JavaFX
 * thread.
 *
 * <p>Parts of the window that can come a moment later are built by it, so that no frame waits for
 * all of them.
 */
public final class FrameByFrame implements Executor {
  /** The pulse after which the first frame is surely on the screen. */
  private static final int FIRST_SHOWN = 3;

  /** In a frame no further piece is begun after so long; its 16 ms are for style and layout too. */
  private static final long ROOM_NANOS = 3_000_000;

  private final Queue<Runnable> waiting = new ArrayDeque<>();
  private int pulsesToSkip = FIRST_SHOWN - 1;
  private AnimationTimer timer;

  @Override
  public void execute(Runnable work) {
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

  /** Whether nothing is left to do. */
  public boolean isDone() {
    return waiting.isEmpty();
  }

  private void beat() {
    if (pulsesToSkip > 0) {
      pulsesToSkip--;
      return;
    }
    long end = System.nanoTime() + ROOM_NANOS;
    while (!waiting.isEmpty() && System.nanoTime() < end) {
      waiting.remove().run();
    }
    if (waiting.isEmpty()) {
      timer.stop();
      pulsesToSkip = 1;
    }
  }
}
