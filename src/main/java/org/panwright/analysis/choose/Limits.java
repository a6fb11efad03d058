package org.panwright.analysis.choose;

import java.util.ArrayList;
import java.util.List;

/**
 * What every lineup of a search has to keep to; candidates are bits of a long.
 *
 * @param size how many paints
 * @param must candidates that are in
 * @param caps sets of which only so many may be in
 */
record Limits(int size, long must, List<Cap> caps) {
  /** At most {@code most} of the candidates {@code of}. */
  record Cap(long of, int most) {}

  Limits {
    caps = List.copyOf(caps);
  }

  /** Whether a candidate may join the paints already in. */
  boolean allows(long in, int candidate) {
    long with = in | 1L << candidate;
    for (Cap cap : caps) {
      if (Long.bitCount(with & cap.of()) > cap.most()) {
        return false;
      }
    }
    return true;
  }

  /** Whether a whole lineup keeps to all. */
  boolean holds(long in) {
    if (Long.bitCount(in) != size || (in & must) != must) {
      return false;
    }
    return caps.stream().allMatch(cap -> Long.bitCount(in & cap.of()) <= cap.most());
  }

  /** The same with one more cap. */
  Limits with(Cap cap) {
    List<Cap> more = new ArrayList<>(caps);
    more.add(cap);
    return new Limits(size, must, more);
  }
}
