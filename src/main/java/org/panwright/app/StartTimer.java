package org.panwright.app;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Properties;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import org.panwright.app.launch.QuickStart;

/**
 * Measures the start: with {@code -Dpanwright.start.time=true} prints the milliseconds from the
 * birth of the process (the first one, if that started a second) to the second pulse with a window,
 * the processor time the JavaFX thread took of them (which says something on a busy machine too),
 * and the megabytes of heap in use then; with {@code =exit} it ends the program after that.
 */
final class StartTimer {
  private static final String PROPERTY = "panwright.start.time";
  private static final int PULSES = 2;

  private StartTimer() {}

  static void ifAsked(Properties properties, PrintStream out) {
    String asked = properties.getProperty(PROPERTY, "");
    if (asked.isEmpty()) {
      return;
    }
    new AnimationTimer() {
      private int pulses;

      @Override
      public void handle(long now) {
        pulses++;
        if (pulses == PULSES) {
          stop();
          out.println(line());
          if (asked.equals("exit")) {
            Platform.exit();
          }
        }
      }
    }.start();
  }

  /** How much earlier than this process the one began that started it to have its classes ready. */
  private static Duration firstProcess() {
    ProcessHandle here = ProcessHandle.current();
    Optional<Instant> first =
        here.parent()
            .filter(parent -> QuickStart.isSecond(System.getProperties()))
            .flatMap(parent -> parent.info().startInstant());
    Optional<Instant> second = here.info().startInstant();
    return first.isPresent() && second.isPresent()
        ? Duration.between(first.get(), second.get())
        : Duration.ZERO;
  }

  private static String line() {
    long born = ManagementFactory.getRuntimeMXBean().getStartTime() - firstProcess().toMillis();
    long used = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    long busy = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    return "second pulse after %d ms, JavaFX thread busy for %d ms, heap in use %d MB"
        .formatted(System.currentTimeMillis() - born, busy / 1_000_000, used / 1_000_000);
  }
}
