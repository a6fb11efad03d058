package org.panwright.app;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import javafx.application.Platform;
import javafx.scene.Scene;

/**
 * Asks the JavaFX thread again and again, and keeps the longest it worked between two answers; and,
 * each for itself, the longest stretch of handlers and the longest pulse.
 *
 * <p>The time is the thread's processor time. A pulse begins with the scene's styles and layout and
 * ends with the next answer; what runs before it between two answers (event handlers, results that
 * come home) is counted as handlers.
 */
final class ThreadWatch {
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private long lastNs;
  private long pulseBeganNs;
  private boolean isPulsing;
  private Held longest = Held.NOTHING;

  /**
   * Milliseconds the thread was held.
   *
   * @param whole between two answers
   * @param handlers by handlers and results that came home
   * @param pulse by styles, layout and what is handed over to be drawn
   */
  record Held(double whole, double handlers, double pulse) {
    static final Held NOTHING = new Held(0, 0, 0);

    /** The longer of each. */
    Held or(Held other) {
      return new Held(
          Math.max(whole, other.whole),
          Math.max(handlers, other.handlers),
          Math.max(pulse, other.pulse));
    }
  }

  void begin(Scene scene) {
    scene.addPreLayoutPulseListener(this::pulse);
    lastNs = threads.getCurrentThreadCpuTime();
    Platform.runLater(this::answer);
  }

  /** Forgets what was; what follows in this event counts from here. */
  void forget() {
    lastNs = threads.getCurrentThreadCpuTime();
    isPulsing = false;
    longest = Held.NOTHING;
  }

  Held longest() {
    return longest;
  }

  private void pulse() {
    if (!isPulsing) {
      isPulsing = true;
      pulseBeganNs = threads.getCurrentThreadCpuTime();
    }
  }

  private void answer() {
    long now = threads.getCurrentThreadCpuTime();
    long handled = isPulsing ? pulseBeganNs : now;
    longest = longest.or(new Held(ms(now - lastNs), ms(handled - lastNs), ms(now - handled)));
    isPulsing = false;
    lastNs = now;
    Platform.runLater(this::answer);
  }

  private static double ms(long ns) {
    return ns / 1e6;
  }
}
