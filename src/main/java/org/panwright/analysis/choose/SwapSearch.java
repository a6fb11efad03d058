package org.panwright.analysis.choose;

import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.function.LongConsumer;
import java.util.stream.IntStream;

/**
 * Finds a lineup of great worth by exchanging paints; one thread. The same input gives the same
 * lineup: the effort is counted in work, not in time, and chance starts from a fixed seed.
 *
 * <p>From the greedy lineup it makes the best exchange of one paint until none helps; then it
 * exchanges a few by chance and does so again, from the best lineup known, until the lineups effort
 * is spent.
 */
final class SwapSearch {
  private static final long SEED = 20;

  /** Gains below this are rounding. */
  private static final double NOTHING = 1e-12;

  private final Cover cover;
  private final Limits limits;
  private final Effort effort;
  private final LongConsumer better;
  private final SplittableRandom chance = new SplittableRandom(SEED);
  private final long[] scratch;

  /**
   * @param effort what may be spent; the first descent is finished in any case
   * @param better told of every lineup that beats all before it
   */
  SwapSearch(Cover cover, Limits limits, Effort effort, LongConsumer better) {
    this.cover = cover;
    this.limits = limits;
    this.effort = effort;
    this.better = better;
    scratch = new long[cover.words()];
  }

  /** The best lineup found; empty if the limits leave no way to a whole one. */
  OptionalLong best() {
    OptionalLong start = greedy();
    if (start.isEmpty()) {
      return start;
    }
    long best = descend(start.getAsLong());
    double bestWorth = worth(best);
    better.accept(best);
    int free = limits.size() - Long.bitCount(limits.must());
    int outside = cover.candidates() - limits.size();
    while (!effort.isSpent() && free > 0 && outside > 0) {
      long tried = descend(shaken(best, 2 + chance.nextInt(Math.max(1, Math.min(free, 4) - 1))));
      double worth = worth(tried);
      if (worth > bestWorth + NOTHING) {
        best = tried;
        bestWorth = worth;
        better.accept(best);
      }
    }
    return OptionalLong.of(best);
  }

  private OptionalLong greedy() {
    long in = limits.must();
    for (Limits.Cap cap : limits.caps()) {
      if (Long.bitCount(in & cap.of()) > cap.most()) {
        return OptionalLong.empty();
      }
    }
    while (Long.bitCount(in) < limits.size()) {
      int next = bestAddition(in);
      if (next < 0) {
        return OptionalLong.empty();
      }
      in |= 1L << next;
    }
    return OptionalLong.of(in);
  }

  private int bestAddition(long in) {
    int[] members = LineupSearch.members(in);
    long[] bits = cover.bits(members, effort);
    int best = -1;
    double bestWorth = -1;
    for (int candidate = 0; candidate < cover.candidates(); candidate++) {
      if ((in >>> candidate & 1) == 0 && limits.allows(in, candidate)) {
        double worth = with(bits, members, candidate);
        if (worth > bestWorth) {
          bestWorth = worth;
          best = candidate;
        }
      }
    }
    return best;
  }

  private double with(long[] bits, int[] members, int candidate) {
    System.arraycopy(bits, 0, scratch, 0, scratch.length);
    cover.add(scratch, candidate, members, members.length);
    effort.spend(members.length);
    return cover.worth(scratch);
  }

  /** The lineup after the best exchange of one paint, again and again until none helps. */
  private long descend(long start) {
    long in = start;
    double worth = worth(in);
    boolean improved = true;
    while (improved) {
      improved = false;
      long bestIn = in;
      for (long rest = in & ~limits.must(); rest != 0; rest &= rest - 1) {
        long without = in & ~Long.lowestOneBit(rest);
        int next = bestAddition(without);
        if (next >= 0) {
          long with = without | 1L << next;
          double withWorth = with == in ? worth : worth(with);
          if (withWorth > worth + NOTHING) {
            worth = withWorth;
            bestIn = with;
            improved = true;
          }
        }
      }
      in = bestIn;
    }
    return in;
  }

  /** Some paints exchanged by chance within the limits. */
  private long shaken(long in, int exchanges) {
    long shaken = in;
    for (int i = 0; i < exchanges; i++) {
      int[] free = LineupSearch.members(shaken & ~limits.must());
      long without = shaken & ~(1L << free[chance.nextInt(free.length)]);
      int[] fitting =
          IntStream.range(0, cover.candidates())
              .filter(c -> (without >>> c & 1) == 0 && limits.allows(without, c))
              .toArray();
      shaken = without | 1L << fitting[chance.nextInt(fitting.length)];
    }
    return shaken;
  }

  private double worth(long set) {
    int[] members = LineupSearch.members(set);
    return cover.worth(cover.bits(members, effort));
  }
}
