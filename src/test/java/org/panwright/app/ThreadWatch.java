package org.panwright.app;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import javafx.application.Platform;

/** Asks the JavaFX thread again and again, and keeps the longest it worked between two answers. */
final class ThreadWatch {
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private long lastNs;
  private long longestNs;

  void begin() {
    lastNs = threads.getCurrentThreadCpuTime();
    Platform.runLater(this::answer);
  }

  /** Forgets what was; what follows in this event counts from here. */
  void forget() {
    lastNs = threads.getCurrentThreadCpuTime();
    longestNs = 0;
  }

  double longestMs() {
    return longestNs / 1e6;
  }

  private void answer() {
    long now = threads.getCurrentThreadCpuTime();
    longestNs = Math.max(longestNs, now - lastNs);
    lastNs = now;
    Platform.runLater(this::answer);
  }
}
