package org.panwright.analysis.choose;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Finds the lineup of greatest worth by branch and bound; one thread.
 *
 * <p>Candidates are decided one after the other: in, then out. What can still come of a half-made
 * lineup is worth at most what all its paints and all undecided ones together are worth, because
 * the worth never falls when a paint is added:
 *
 * <pre>worth(P) ≤ worth(in ∪ undecided)   for every P with in ⊆ P ⊆ in ∪ undecided</pre>
 *
 * <p>Large branches are bounded more closely by what it costs to leave paints out, see {@link
 * Farewell}. Branches that cannot beat the best known are left out. When the effort is spent, what
 * was not looked into is summed up in the bound, and the best known is not proven.
 */
final class LineupSearch {
  /** Branches with fewer lineups than this are walked through without asking for their bound. */
  private static final double WORTH_BOUNDING = 150;

  /** Branches with more lineups than this have it reckoned what leaving candidates out costs. */
  private static final double WORTH_RECKONING = 2000;

  private final Cover cover;
  private final Limits limits;
  private final Effort effort;
  private final int[] order;
  private final int[] lineup;
  private final long[][] bits;
  private long best;
  private double bestWorth;
  private double open;

  /**
   * @param start a lineup that keeps to the limits, to be beaten
   * @param effort what may be spent
   */
  LineupSearch(Cover cover, Limits limits, long start, Effort effort) {
    this.cover = cover;
    this.limits = limits;
    this.effort = effort;
    lineup = new int[limits.size()];
    bits = new long[limits.size() + 1][cover.words()];
    best = start;
    bestWorth = worth(start);
    order = order();
  }

  /** The best lineup found. */
  long best() {
    return best;
  }

  /** Its worth. */
  double bestWorth() {
    return bestWorth;
  }

  /** No lineup within the limits is worth more than this. */
  double bound() {
    return Math.max(bestWorth, open);
  }

  /** Whether nothing can beat the best. */
  boolean isProven() {
    return open <= bestWorth;
  }

  /** Searches. */
  void run() {
    int count = 0;
    for (int candidate = 0; candidate < cover.candidates(); candidate++) {
      if ((limits.must() >>> candidate & 1) != 0) {
        take(candidate, count++);
      }
    }
    if (count == lineup.length) {
      return;
    }
    descend(0, count, limits.must(), Farewell.NONE, 0);
  }

  /**
   * Decides the candidates from {@code next} on; {@code count} are in.
   *
   * @param farewell what it costs to leave candidates out, reckoned at this branch or above it
   * @param lost worth lost by those left out since then
   */
  private void descend(int next, int count, long in, Farewell farewell, double lost) {
    int left = order.length - next;
    int wanted = lineup.length - count;
    if (left < wanted) {
      return;
    }
    Farewell costs = farewell;
    double gone = lost;
    if (costs.bound(gone, order, next, left - wanted) <= bestWorth) {
      return;
    }
    double below = choose(left, wanted);
    if (effort.isSpent() || below > WORTH_BOUNDING) {
      long reachable = in | undecided(next);
      if (below > WORTH_RECKONING && left > wanted) {
        costs = Farewell.of(cover, reachable, undecided(next), effort);
        gone = 0;
      }
      double bound = Math.min(worth(reachable), costs.bound(gone, order, next, left - wanted));
      if (bound <= bestWorth) {
        return;
      }
      if (effort.isSpent()) {
        open = Math.max(open, bound);
        return;
      }
    }
    if (wanted == 1) {
      last(next, count, in);
      return;
    }
    int candidate = order[next];
    if (limits.allows(in, candidate)) {
      take(candidate, count);
      descend(next + 1, count + 1, in | 1L << candidate, costs, gone);
    }
    descend(next + 1, count, in, costs, gone + costs.of(candidate));
  }

  private void last(int next, int count, long in) {
    for (int place = next; place < order.length; place++) {
      int candidate = order[place];
      if (limits.allows(in, candidate)) {
        take(candidate, count);
        double worth = cover.worth(bits[count + 1]);
        if (worth > bestWorth) {
          bestWorth = worth;
          best = in | 1L << candidate;
        }
      }
    }
  }

  private void take(int candidate, int count) {
    effort.spend(count);
    System.arraycopy(bits[count], 0, bits[count + 1], 0, cover.words());
    cover.add(bits[count + 1], candidate, lineup, count);
    lineup[count] = candidate;
  }

  private long undecided(int next) {
    long set = 0;
    for (int place = next; place < order.length; place++) {
      set |= 1L << order[place];
    }
    return set;
  }

  private double worth(long set) {
    return cover.worth(cover.bits(members(set), effort));
  }

  /** The candidates of a set in their order. */
  static int[] members(long set) {
    int[] members = new int[Long.bitCount(set)];
    int at = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      members[at++] = Long.numberOfTrailingZeros(rest);
    }
    return members;
  }

  /** The free candidates, those that would be missed most first, so that bounds fall soon. */
  private int[] order() {
    long all = cover.candidates() == 64 ? -1L : (1L << cover.candidates()) - 1;
    double[] without = new double[cover.candidates()];
    for (int candidate = 0; candidate < without.length; candidate++) {
      without[candidate] = worth(all & ~(1L << candidate));
    }
    return Arrays.stream(members(all & ~limits.must()))
        .boxed()
        .sorted(Comparator.comparingDouble(candidate -> without[candidate]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** How many ways there are to choose {@code few} of {@code many}. */
  static double choose(int many, int few) {
    double ways = 1;
    for (int i = 1; i <= Math.min(few, many - few); i++) {
      ways *= (double) (many - Math.min(few, many - few) + i) / i;
    }
    return ways;
  }
}
