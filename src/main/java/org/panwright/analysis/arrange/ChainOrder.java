package org.panwright.analysis.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Lays paints along a chain of wells so that their keys rise: the cost is the sum of all steps
 * back.
 *
 * <pre>cost = Σ max(0, key(i) − key(i + 1))   over wells that follow each other</pre>
 *
 * <p>Without pins the sorted order costs nothing. With pins it is exact up to {@value #EXACT} free
 * paints, by dynamic programming over the sets of paints placed (Held and Karp 1962); beyond that
 * the free ones are sorted and the bound is what the pins alone cost.
 */
final class ChainOrder {
  static final int EXACT = 16;

  /**
   * @param places for each well of the chain the number of the paint in it
   * @param cost what it costs
   * @param bound what it costs at least
   */
  record Laid(List<Integer> places, double cost, double bound) {}

  private ChainOrder() {}

  /**
   * Lays the paints.
   *
   * @param keys of the paints, paint i sitting in well i now
   * @param pinned which wells keep their paint
   */
  static Laid lay(double[] keys, boolean[] pinned) {
    List<Integer> free = new ArrayList<>();
    for (int i = 0; i < keys.length; i++) {
      if (!pinned[i]) {
        free.add(i);
      }
    }
    free.sort(Comparator.comparingDouble(i -> keys[i]));
    if (free.size() == keys.length || free.size() > EXACT) {
      int[] laid = fill(keys.length, pinned, free);
      double cost = cost(keys, laid);
      return new Laid(list(laid), cost, free.size() == keys.length ? cost : pins(keys, pinned));
    }
    int[] laid = best(keys, pinned, free);
    double cost = cost(keys, laid);
    return new Laid(list(laid), cost, cost);
  }

  /** The cost of paints in their places. */
  static double cost(double[] keys, int[] places) {
    double cost = 0;
    for (int i = 1; i < places.length; i++) {
      cost += Math.max(0, keys[places[i - 1]] - keys[places[i]]);
    }
    return cost;
  }

  private static List<Integer> list(int[] places) {
    return Arrays.stream(places).boxed().toList();
  }

  private static int[] fill(int length, boolean[] pinned, List<Integer> free) {
    int[] laid = new int[length];
    int next = 0;
    for (int i = 0; i < length; i++) {
      laid[i] = pinned[i] ? i : free.get(next++);
    }
    return laid;
  }

  private static double pins(double[] keys, boolean[] pinned) {
    double cost = 0;
    int last = -1;
    for (int i = 0; i < keys.length; i++) {
      if (pinned[i]) {
        cost += last < 0 ? 0 : Math.max(0, keys[last] - keys[i]);
        last = i;
      }
    }
    return cost;
  }

  /** State: which free paints are placed and which stands last; the well follows from the count. */
  private static int[] best(double[] keys, boolean[] pinned, List<Integer> free) {
    int n = free.size();
    double[][] least = new double[1 << n][n];
    int[][] before = new int[1 << n][n];
    for (double[] row : least) {
      Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    int[] wells = new int[n];
    int count = 0;
    for (int i = 0; i < keys.length; i++) {
      if (!pinned[i]) {
        wells[count++] = i;
      }
    }
    for (int paint = 0; paint < n; paint++) {
      least[1 << paint][paint] =
          between(keys, pinned, -1, wells[0], Double.NaN, keys[free.get(paint)]);
    }
    for (int set = 1; set < 1 << n; set++) {
      int placed = Integer.bitCount(set);
      for (int last = 0; last < n && placed < n; last++) {
        if (least[set][last] == Double.POSITIVE_INFINITY) {
          continue;
        }
        for (int next = 0; next < n; next++) {
          if ((set >>> next & 1) == 0) {
            double cost =
                least[set][last]
                    + between(
                        keys,
                        pinned,
                        wells[placed - 1],
                        wells[placed],
                        keys[free.get(last)],
                        keys[free.get(next)]);
            int with = set | 1 << next;
            if (cost < least[with][next]) {
              least[with][next] = cost;
              before[with][next] = last;
            }
          }
        }
      }
    }
    return trace(keys, pinned, free, wells, least, before);
  }

  private static int[] trace(
      double[] keys,
      boolean[] pinned,
      List<Integer> free,
      int[] wells,
      double[][] least,
      int[][] before) {
    int[] laid = new int[keys.length];
    Arrays.setAll(laid, i -> i);
    int n = free.size();
    if (n == 0) {
      return laid;
    }
    int set = (1 << n) - 1;
    int last = 0;
    double best = Double.POSITIVE_INFINITY;
    for (int paint = 0; paint < n; paint++) {
      double after =
          between(keys, pinned, wells[n - 1], keys.length, keys[free.get(paint)], Double.NaN);
      if (least[set][paint] + after < best) {
        best = least[set][paint] + after;
        last = paint;
      }
    }
    for (int place = n - 1; place >= 0; place--) {
      laid[wells[place]] = free.get(last);
      int came = before[set][last];
      set &= ~(1 << last);
      last = came;
    }
    return laid;
  }

  /** Steps back from one free well over the pinned wells after it to the next free one. */
  private static double between(
      double[] keys, boolean[] pinned, int from, int to, double fromKey, double toKey) {
    double cost = 0;
    double key = fromKey;
    for (int i = from + 1; i < to; i++) {
      if (pinned[i]) {
        cost += Double.isNaN(key) ? 0 : Math.max(0, key - keys[i]);
        key = keys[i];
      }
    }
    return cost + (Double.isNaN(key) || Double.isNaN(toKey) ? 0 : Math.max(0, key - toKey));
  }
}
