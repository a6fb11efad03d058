package org.panwright.app.fx;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Function;

/**
 * Work of one kind that is done away from the caller's thread and of which only the newest counts.
 *
 * <p>A request made while another runs makes the older one stop at its next question; a result that
 * is no longer the newest is dropped. Results and failures come back on {@code home}. Nobody waits.
 *
 * @param <R> what the work yields
 */
public final class Latest<R> {
  private final Executor away;
  private final Executor home;
  private final AtomicLong newest = new AtomicLong();

  /**
   * @param away where the work runs, usually one worker thread
   * @param home where results arrive, usually the JavaFX thread
   */
  public Latest(Executor away, Executor home) {
    this.away = away;
    this.home = home;
  }

  /**
   * Asks for {@code work} to be done.
   *
   * @param work gets a question "am I outdated?" to be asked now and then, and may answer it by
   *     throwing {@link CancellationException}
   * @param done gets the result, unless a newer request was made meanwhile
   * @param failed gets what went wrong, under the same condition; an {@link Error}, such as a lack
   *     of memory, as the cause of a {@link CompletionException}
   */
  public void request(
      Function<BooleanSupplier, R> work, Consumer<R> done, Consumer<RuntimeException> failed) {
    long ticket = newest.incrementAndGet();
    BooleanSupplier outdated = () -> newest.get() != ticket;
    away.execute(
        () -> {
          if (outdated.getAsBoolean()) {
            return;
          }
          try {
            R result = work.apply(outdated);
            deliver(outdated, () -> done.accept(result));
          } catch (CancellationException stopped) {
            // A newer request is on its way; there is nothing to tell.
          } catch (RuntimeException failure) {
            deliver(outdated, () -> failed.accept(failure));
          } catch (Error failure) {
            // Nobody would be told otherwise, and the window would wait for ever.
            deliver(outdated, () -> failed.accept(new CompletionException(failure)));
          }
        });
  }

  /** Makes every request made so far count no more. */
  public void cancel() {
    newest.incrementAndGet();
  }

  /**
   * Tells numbers from the work to the one who waits for it, as long as they do.
   *
   * @param outdated the question the work was given
   * @param home where the numbers are to arrive
   */
  public static DoubleConsumer telling(
      BooleanSupplier outdated, Executor home, DoubleConsumer told) {
    return number ->
        home.execute(
            () -> {
              if (!outdated.getAsBoolean()) {
                told.accept(number);
              }
            });
  }

  private void deliver(BooleanSupplier outdated, Runnable delivery) {
    home.execute(
        () -> {
          if (!outdated.getAsBoolean()) {
            delivery.run();
          }
        });
  }
}
