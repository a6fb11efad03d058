package org.panwright.app;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

/** The threads beside JavaFX's own; none keeps the program alive. */
public final class Workers implements AutoCloseable {
  private final ExecutorService judging = single("judging");
  private final ExecutorService painting = single("painting");
  private final ExecutorService files = single("files");
  private final ExecutorService reading = single("reading");
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(work -> daemon(work, "clock"));

  /** One thread for judging lineups. */
  public ExecutorService judging() {
    return judging;
  }

  /** One thread for pictures. */
  public ExecutorService painting() {
    return painting;
  }

  /** One thread for papers and files. */
  public ExecutorService files() {
    return files;
  }

  /** One thread for reading photos and fitting what is learnt from them. */
  public ExecutorService reading() {
    return reading;
  }

  /** One thread for what is done every so often. */
  public ScheduledExecutorService clock() {
    return clock;
  }

  @Override
  public void close() {
    judging.shutdownNow();
    painting.shutdownNow();
    reading.shutdownNow();
    files.shutdown();
    clock.shutdownNow();
  }

  private static ExecutorService single(String name) {
    return Executors.newSingleThreadExecutor(work -> daemon(work, name));
  }

  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(work, "panwright-" + name);
    thread.setDaemon(true);
    return thread;
  }
}
