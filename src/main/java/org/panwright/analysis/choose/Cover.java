package org.panwright.analysis.choose;

import java.util.EnumMap;
import java.util.Map;
import org.panwright.kit.Aim;

/**
 * What every paint, pair and triad of some candidates attains, as bits, so that what a lineup
 * attains is the union over all its singles, pairs and triads.
 *
 * <p>Candidates are numbered from 0. The bits are laid out aim by aim; each aim starts a new word.
 * Only words that hold a bit are kept. A pair's bits leave out those of its paints, a triad's those
 * of its pairs: the unions are the same and far smaller.
 *
 * <pre>
 * worth(P) = Σ over aims of  weight · |bits(P) ∩ aim| / most(aim)   /   Σ weights
 * bits(P)  = ∪ bits(T),  T ⊆ P,  1 ≤ |T| ≤ 3
 * </pre>
 *
 * <p>The worth never falls when a paint is added; that is what makes the bounds of {@link
 * LineupSearch} hold.
 */
final class Cover {
  private final int candidates;
  private final int words;
  private final int[] starts;
  private final int[] places;
  private final long[] masks;
  private final int[] aimStarts;
  private final double[] perBit;

  /**
   * @param starts for each tuple of {@link #single}, {@link #pair}, {@link #triad} where its words
   *     start, and one more for the end
   * @param places the word of each entry
   * @param masks the bits of each entry
   * @param aimStarts the first word of each {@link Aim}, and one more for the end
   * @param perBit worth of one bit of each aim
   */
  Cover(
      int candidates, int[] starts, int[] places, long[] masks, int[] aimStarts, double[] perBit) {
    this.candidates = candidates;
    this.starts = starts;
    this.places = places;
    this.masks = masks;
    this.aimStarts = aimStarts;
    this.perBit = perBit;
    words = aimStarts[aimStarts.length - 1];
  }

  int candidates() {
    return candidates;
  }

  /** Longs in a set of bits. */
  int words() {
    return words;
  }

  /** How many singles, pairs and triads there are. */
  static int tuples(int candidates) {
    int n = candidates;
    return n + n * (n - 1) / 2 + n * (n - 1) * (n - 2) / 6;
  }

  static int single(int paint) {
    return paint;
  }

  /** The number of a pair, {@code low < high}. */
  static int pair(int candidates, int low, int high) {
    return candidates + high * (high - 1) / 2 + low;
  }

  /** The number of a triad, {@code low < middle < high}. */
  static int triad(int candidates, int low, int middle, int high) {
    return candidates
        + candidates * (candidates - 1) / 2
        + high * (high - 1) * (high - 2) / 6
        + middle * (middle - 1) / 2
        + low;
  }

  /** Adds to {@code bits} all that a paint brings to the first {@code count} paints of a lineup. */
  void add(long[] bits, int paint, int[] lineup, int count) {
    or(bits, single(paint));
    for (int i = 0; i < count; i++) {
      int other = lineup[i];
      int low = Math.min(paint, other);
      int high = Math.max(paint, other);
      or(bits, pair(candidates, low, high));
      for (int j = 0; j < i; j++) {
        int third = lineup[j];
        if (third < low) {
          or(bits, triad(candidates, third, low, high));
        } else if (third < high) {
          or(bits, triad(candidates, low, third, high));
        } else {
          or(bits, triad(candidates, low, high, third));
        }
      }
    }
  }

  private void or(long[] bits, int tuple) {
    int end = starts[tuple + 1];
    for (int at = starts[tuple]; at < end; at++) {
      bits[places[at]] |= masks[at];
    }
  }

  /** The bits of a whole lineup. */
  long[] bits(int[] lineup, Effort effort) {
    long[] bits = new long[words];
    for (int i = 0; i < lineup.length; i++) {
      effort.spend(i);
      add(bits, lineup[i], lineup, i);
    }
    return bits;
  }

  /** The worth of a set of bits, 0..1. */
  double worth(long[] bits) {
    double worth = 0;
    for (int aim = 0; aim < perBit.length; aim++) {
      worth += perBit[aim] * count(bits, aim);
    }
    return worth;
  }

  /** The worth of the bits that two sets share. */
  double worthOf(long[] one, long[] other) {
    long[] shared = new long[words];
    for (int word = 0; word < words; word++) {
      shared[word] = one[word] & other[word];
    }
    return worth(shared);
  }

  /** The worth of a set of bits, aim by aim; the sum is {@link #worth}. */
  Map<Aim, Double> byAim(long[] bits) {
    Map<Aim, Double> shares = new EnumMap<>(Aim.class);
    for (Aim aim : Aim.values()) {
      shares.put(aim, perBit[aim.ordinal()] * count(bits, aim.ordinal()));
    }
    return shares;
  }

  private int count(long[] bits, int aim) {
    int count = 0;
    for (int word = aimStarts[aim]; word < aimStarts[aim + 1]; word++) {
      count += Long.bitCount(bits[word]);
    }
    return count;
  }

  /** How clean a hue the bits reach at a step of the ring: whole levels of chroma. */
  int ringLevel(long[] bits, int step) {
    long word = bits[aimStarts[Aim.RING.ordinal()] + step / 2];
    return Long.bitCount(step % 2 == 0 ? word & 0xFFFFFFFFL : word >>> 32);
  }
}
