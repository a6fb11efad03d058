package org.panwright.swatch.fit;

import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/**
 * Watches a work of several fits for somebody who waits: is it still wanted, and what share is
 * done.
 *
 * <p>A fit asks before each trial step and cannot know how many there will be; most take some
 * twenty. So of a part in which q questions were asked, this share counts as done:
 *
 * <pre>1 − e^(−q / usual)</pre>
 *
 * <p>It never falls, and the end of a part is told only by the next part or by the result.
 *
 * @param outdated whether nobody wants to know any more
 * @param share told the share done, 0..1, on the thread of the work
 */
public record FitWatch(BooleanSupplier outdated, DoubleConsumer share) {
  /** Questions after which 63 % of one fit count as done; 81 % do after twenty. */
  public static final double ONE_FIT = 12;

  /** Somebody who does not look at the share. */
  public static FitWatch of(BooleanSupplier outdated) {
    return new FitWatch(outdated, share -> {});
  }

  /**
   * The question to be asked in one part of the work.
   *
   * @param from the share of the whole that is done when the part begins
   * @param to the share that is done when it ends
   * @param usual questions after which 63 % of the part count as done
   */
  public BooleanSupplier part(double from, double to, double usual) {
    share.accept(from);
    int[] asked = {0};
    return () -> {
      asked[0]++;
      share.accept(from + (to - from) * (1 - Math.exp(-asked[0] / usual)));
      return outdated.getAsBoolean();
    };
  }
}
