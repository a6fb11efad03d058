package org.panwright.analysis.choose;

import java.util.Arrays;

/**
 * What it costs at least to leave candidates out of a set of paints.
 *
 * <p>A bit that all singles, pairs and triads reaching it share a paint for is lost as soon as any
 * of the paints they share leaves. Shared out evenly among these (three at most), so that no bit
 * counts twice:
 *
 * <pre>
 * cost(x) = Σ worth(bit) / |shared(bit)|   over the bits that x shares
 * worth(S ∖ Q) ≤ worth(S) − Σ cost(x), x ∈ Q
 * </pre>
 */
final class Farewell {
  /** More than the sums below can be off by. */
  private static final double ROUNDING = 1e-12;

  /** Nothing is known. */
  static final Farewell NONE = new Farewell(Double.POSITIVE_INFINITY, new double[0]);

  private final double worth;
  private final double[] costs;

  /**
   * @param worth the worth of the whole set
   * @param costs by candidate; 0 for those that stay
   */
  private Farewell(double worth, double[] costs) {
    this.worth = worth;
    this.costs = costs;
  }

  /** The costs of leaving each of {@code leaving} out of {@code set}. */
  static Farewell of(Cover cover, long set, long leaving, Effort effort) {
    long[] all = cover.bits(LineupSearch.members(set), effort);
    int[] leavers = LineupSearch.members(leaving);
    long[][] lost = new long[leavers.length][];
    long[] once = new long[all.length];
    long[] twice = new long[all.length];
    long[] thrice = new long[all.length];
    for (int i = 0; i < leavers.length; i++) {
      lost[i] = cover.bits(LineupSearch.members(set & ~(1L << leavers[i])), effort);
      for (int word = 0; word < all.length; word++) {
        long gone = all[word] & ~lost[i][word];
        lost[i][word] = gone;
        thrice[word] |= twice[word] & gone;
        twice[word] |= once[word] & gone;
        once[word] |= gone;
      }
    }
    double[] costs = new double[cover.candidates()];
    for (int i = 0; i < leavers.length; i++) {
      costs[leavers[i]] =
          cover.worthOf(lost[i], once)
              - cover.worthOf(lost[i], twice) / 2
              - cover.worthOf(lost[i], thrice) / 6;
    }
    return new Farewell(cover.worth(all), costs);
  }

  /** The worth of the whole set. */
  double worth() {
    return worth;
  }

  /** What it costs to leave a candidate out. */
  double of(int candidate) {
    return costs.length == 0 ? 0 : costs[candidate];
  }

  /**
   * The most a lineup can be worth.
   *
   * @param lost the costs of those left out already
   * @param order candidates; those from {@code next} on are undecided
   * @param leave how many of the undecided have yet to be left out
   */
  double bound(double lost, int[] order, int next, int leave) {
    if (costs.length == 0) {
      return worth;
    }
    double[] undecided = new double[order.length - next];
    for (int i = 0; i < undecided.length; i++) {
      undecided[i] = costs[order[next + i]];
    }
    Arrays.sort(undecided);
    double least = lost;
    for (int i = 0; i < leave; i++) {
      least += undecided[i];
    }
    return worth - least + ROUNDING;
  }
}
