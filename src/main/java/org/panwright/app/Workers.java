package org.panwright.app;

import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The threads beside JavaFX's own; none keeps the program alive.
 *
 * <p>Pictures and judgements asked for after {@link #close}, as by the pointer leaving a window
 * that is going, are dropped: nobody will see them. Files are refused then, so that none is lost
 * unsaid.
 */
public final class Workers implements AutoCloseable {
  private final Executor later;
  private final ExecutorService judging = single("judging");
  private final ExecutorService painting = single("painting");
  private final ExecutorService files =
      Executors.newSingleThreadExecutor(work -> daemon(work, "files"));
  private final ExecutorService opening = single("opening");
  private final ExecutorService reading = single("reading");
  private final ExecutorService searching = single("searching");
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(work -> daemon(work, "clock"));

  /** Workers for a window that is built whole at once. */
  public Workers() {
    this(Runnable::run);
  }

  private Workers(Executor later) {
    this.later = later;
  }

  /**
   * Workers for a window that is first shown, then completed.
   *
   * @param later does work once the window is seen; on the JavaFX thread
   */
  static Workers after(Executor later) {
    return new Workers(later);
  }

  /** When the panes are built that can come a moment after the window is first seen. */
  public Executor later() {
    return later;
  }

  /**
   * One thread for judging lineups. What is asked of it before the window is seen waits until then,
   * since it would take the processor from the window.
   */
  public Executor judging() {
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

  /** One thread for opening photos, so that the next one waits for nothing learnt from the last. */
  public ExecutorService opening() {
    return opening;
  }

  /** One thread for reading photos and fitting what is learnt from them. */
  public ExecutorService reading() {
    return reading;
  }

  /** One thread for seeking lineups to propose. */
  public ExecutorService searching() {
    return searching;
  }

  /** One thread for what is done every so often. */
  public ScheduledExecutorService clock() {
    return clock;
  }

  @Override
  public void close() {
    judging.shutdownNow();
    painting.shutdownNow();
    opening.shutdownNow();
    reading.shutdownNow();
    searching.shutdownNow();
    files.shutdown();
    clock.shutdownNow();
  }

  private static ExecutorService single(String name) {
    return new ThreadPoolExecutor(
        1,
        1,
        0,
        TimeUnit.MILLISECONDS,
        new LinkedBlockingQueue<>(),
        work -> daemon(work, name),
        new ThreadPoolExecutor.DiscardPolicy());
  }

  private static Thread daemon(Runnable work, String name) {
    Thread thread = new Thread(work, "panwright-" + name);
    thread.setDaemon(true);
    return thread;
  }
}
