package org.panwright.app;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import javafx.application.Platform;
import org.panwright.kit.Edit;

/**
 * How long it takes from the drop of a paint until grid, ring, findings and box all show it: to the
 * end of the pulse in which they do, when the toolkit has all it needs to draw.
 */
final class DropTimes {
  private static final int DROPS = 32;
  private static final List<Size> SIZES =
      List.of(new Size(12, 20), new Size(20, 20), new Size(24, 48), new Size(48, 48));

  private final MeasuredWindow window;
  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private boolean isWaiting;
  private double beganMs;
  private double usedMs;
  private Runnable then = () -> {};
  private List<Shown> shown = new ArrayList<>();

  private record Size(int wells, int paints) {}

  /**
   * Milliseconds until all is shown.
   *
   * @param wall by the clock
   * @param processor of the JavaFX thread and our own threads together
   */
  private record Shown(double wall, double processor) {}

  DropTimes(MeasuredWindow window) {
    this.window = window;
  }

  /** Prints a table, and ends the program. */
  void run() {
    System.out.printf("%nfrom a drop to the finished picture; milliseconds%n");
    System.out.printf("%-20s%-24s%s%n", "", "   by the clock", "   processor");
    String heads = "   first  median  most  ";
    System.out.printf("%-20s%s%s%n", "", heads, heads);
    window.stage().getScene().addPostLayoutPulseListener(this::pulse);
    window.whenCalm(() -> open(0));
  }

  private void open(int size) {
    if (size == SIZES.size()) {
      Platform.exit();
      return;
    }
    shown = new ArrayList<>();
    window.session().open(LargeKit.of(SIZES.get(size).paints, SIZES.get(size).wells));
    window.whenCalm(() -> drop(size, 0));
  }

  private void drop(int size, int round) {
    if (round == DROPS) {
      print(SIZES.get(size));
      open(size + 1);
      return;
    }
    then = () -> window.whenCalm(() -> drop(size, round + 1));
    isWaiting = true;
    usedMs = processorMs();
    beganMs = wallMs();
    window
        .session()
        .perform(
            new Edit.PlacePaint(window.lineup().id(), window.well(0), window.paint(round + 1)));
  }

  private void pulse() {
    if (isWaiting && window.workbench().isSettled()) {
      isWaiting = false;
      Platform.runLater(
          () -> {
            shown.add(new Shown(wallMs() - beganMs, processorMs() - usedMs));
            then.run();
          });
    }
  }

  private void print(Size size) {
    System.out.printf(
        "%-20s%s%s%n",
        size.wells + " of " + size.paints + " paints",
        figures(Shown::wall),
        figures(Shown::processor));
  }

  /** The first drop into a new kit, then median and longest of the second half. */
  private String figures(ToDoubleFunction<Shown> of) {
    double[] warm = shown.stream().skip(DROPS / 2).mapToDouble(of).sorted().toArray();
    return String.format(
        Locale.ROOT,
        "%8.1f%8.1f%6.1f  ",
        of.applyAsDouble(shown.get(0)),
        warm[warm.length / 2],
        warm[warm.length - 1]);
  }

  private static double wallMs() {
    return System.nanoTime() / 1e6;
  }

  private double processorMs() {
    long sum = 0;
    for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
      if (thread != null && isOfTheWindow(thread.getThreadName())) {
        sum += Math.max(0, threads.getThreadCpuTime(thread.getThreadId()));
      }
    }
    return sum / 1e6;
  }

  private static boolean isOfTheWindow(String thread) {
    return thread.startsWith("panwright-") || thread.equals("JavaFX Application Thread");
  }
}
