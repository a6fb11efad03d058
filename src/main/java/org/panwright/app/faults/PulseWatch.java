package org.panwright.app.faults;

import java.util.Arrays;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;

/**
 * Looks whether the JavaFX thread still answers, and writes into the log what it was doing when it
 * did not for {@value #LIMIT_MS} ms.
 */
public final class PulseWatch {
  private static final long LIMIT_MS = 250;
  private static final long BETWEEN_MS = 100;

  private final Thread watched;
  private final Executor home;
  private final Log log;
  private final AtomicLong askedAt = new AtomicLong();
  private boolean written;

  /**
   * @param watched the JavaFX thread
   * @param home runs work on it
   */
  public PulseWatch(Thread watched, Executor home, Log log) {
    this.watched = watched;
    this.home = home;
    this.log = log;
  }

  /** Starts watching on a thread of {@code clock}. */
  public void start(ScheduledExecutorService clock) {
    var unused =
        clock.scheduleWithFixedDelay(this::look, BETWEEN_MS, BETWEEN_MS, TimeUnit.MILLISECONDS);
  }

  private void look() {
    long asked = askedAt.get();
    if (asked == 0) {
      askedAt.set(System.nanoTime());
      written = false;
      home.execute(() -> askedAt.set(0));
      return;
    }
    long waitingMs = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - asked);
    if (waitingMs > LIMIT_MS && !written) {
      written = true;
      log.note(
          "the window has not answered for %d ms, it is at%n%s"
              .formatted(
                  waitingMs,
                  Arrays.stream(watched.getStackTrace())
                      .map(frame -> "  " + frame)
                      .collect(Collectors.joining(System.lineSeparator()))));
    }
  }
}
