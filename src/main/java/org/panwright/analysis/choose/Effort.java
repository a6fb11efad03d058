package org.panwright.analysis.choose;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * How much work a search may do, counted in singles, pairs and triads looked up and not in time, so
 * that the same input gives the same output on any machine; one thread.
 */
final class Effort {
  /** Look-ups between two questions whether they are still wanted. */
  private static final long QUESTION = 200_000;

  private final long all;
  private final BooleanSupplier cancelled;
  private final DoubleConsumer progress;
  private long spent;
  private long asked;

  /**
   * @param all how many look-ups
   * @param cancelled asked now and then
   * @param progress told now and then which share is spent, 0..1
   */
  Effort(long all, BooleanSupplier cancelled, DoubleConsumer progress) {
    this.all = all;
    this.cancelled = cancelled;
    this.progress = progress;
  }

  /**
   * Counts the work of adding a paint to {@code count} others.
   *
   * @throws CancellationException if it is no longer wanted
   */
  void spend(int count) {
    spent += 1 + count + (long) count * (count - 1) / 2;
    if (spent - asked > QUESTION) {
      asked = spent;
      if (cancelled.getAsBoolean()) {
        throw new CancellationException("lineups no longer wanted");
      }
      progress.accept(Math.min(1, (double) spent / all));
    }
  }

  /** Whether all is spent. */
  boolean isSpent() {
    return spent >= all;
  }
}
