package org.panwright.analysis.arrange;

import java.util.Arrays;
import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Lays paints into wells so that neighbours harm each other least: exchanges of two from many
 * starts, then branch and bound with a fixed effort, which proves the best or gives a bound.
 *
 * <pre>
 * cost  = Σ harm(paint in i, paint in j)   over wells i, j beside each other
 * burden(x, w) = harm of paint x in free well w with the neighbours placed
 * bound        = cost among placed paints + Σ over x of min over w of burden(x, w)
 *              + Σ over w of min over x of what of burden(x, w) exceeds that of its paint
 * </pre>
 *
 * <p>The second sum holds because there are as many free wells of a kind as paints for them, so
 * that each well takes one (a step of Kuhn's method for assignments, 1955). The same input gives
 * the same order; chance starts from a fixed seed. One thread.
 */
final class NeighbourOrder {
  private static final long SEED = 7;
  private static final int STARTS = 24;

  /** Burdens looked at before the search for a proof is given up. */
  private static final long EFFORT = 400_000_000L;

  private static final int QUESTION = 1024;
  private static final double ROUNDING = 1e-12;

  private final double[][] harm;
  private final boolean[][] beside;
  private final boolean[] pinned;
  private final int[] kind;
  private final BooleanSupplier cancelled;
  private final int size;
  private final int[] order;
  private int[] best;
  private double bestCost;
  private double open = Double.POSITIVE_INFINITY;
  private final double[][][] burdens;
  private final double[] rowLeast;
  private long effort;
  private int branches;

  /**
   * @param harm of each paint to each other, symmetric; paint i sits in well i now
   * @param beside which wells lie beside each other, symmetric
   * @param pinned which wells keep their paint
   * @param kind a paint may only go to a well of the same kind as it sits in now
   * @param cancelled asked now and then
   */
  NeighbourOrder(
      double[][] harm,
      boolean[][] beside,
      boolean[] pinned,
      int[] kind,
      BooleanSupplier cancelled) {
    this.harm = harm;
    this.beside = beside;
    this.pinned = pinned;
    this.kind = kind;
    this.cancelled = cancelled;
    size = pinned.length;
    burdens = new double[size + 1][size][size];
    rowLeast = new double[size];
    order =
        IntStream.range(0, size)
            .boxed()
            .sorted(Comparator.comparingDouble(paint -> -Arrays.stream(harm[paint]).sum()))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /** Lays the paints; see {@link #places}, {@link #cost}, {@link #bound}. */
  void run() {
    best = new int[size];
    Arrays.setAll(best, i -> i);
    bestCost = cost(best);
    SplittableRandom chance = new SplittableRandom(SEED);
    for (int start = 0; start < STARTS && bestCost > 0; start++) {
      int[] tried = best.clone();
      for (int i = 0; start > 0 && i < 4 * size; i++) {
        exchange(tried, chance.nextInt(size), chance.nextInt(size));
      }
      improve(tried);
      double cost = cost(tried);
      if (cost < bestCost - ROUNDING) {
        best = tried;
        bestCost = cost;
      }
    }
    if (bestCost > 0) {
      int[] places = new int[size];
      Arrays.fill(places, -1);
      for (int well = 0; well < size; well++) {
        if (pinned[well]) {
          places[well] = well;
        }
      }
      for (int paint = 0; paint < size; paint++) {
        for (int well = 0; well < size; well++) {
          burdens[0][paint][well] = added(places, well, paint);
        }
      }
      int[] free = Arrays.stream(order).filter(paint -> !pinned[paint]).toArray();
      descend(places, free, 0, costOfPlaced(places));
    }
  }

  /** For each well the number of the paint in it. */
  int[] places() {
    return best.clone();
  }

  double cost() {
    return bestCost;
  }

  /** No way to lay them costs less. */
  double bound() {
    return Math.min(bestCost, open);
  }

  /** The cost of paints in their places. */
  double cost(int[] places) {
    double cost = 0;
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        cost += beside[i][j] ? harm[places[i]][places[j]] : 0;
      }
    }
    return cost;
  }

  private boolean exchange(int[] places, int one, int other) {
    if (one == other || pinned[one] || pinned[other] || kind[one] != kind[other]) {
      return false;
    }
    int paint = places[one];
    places[one] = places[other];
    places[other] = paint;
    return true;
  }

  private void improve(int[] places) {
    double cost = cost(places);
    boolean improved = true;
    while (improved) {
      improved = false;
      for (int one = 0; one < size; one++) {
        for (int other = 0; other < one; other++) {
          if (exchange(places, one, other)) {
            double after = cost(places);
            if (after < cost - ROUNDING) {
              cost = after;
              improved = true;
            } else {
              exchange(places, one, other);
            }
          }
        }
      }
    }
  }

  private double costOfPlaced(int[] places) {
    double cost = 0;
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        cost += places[i] >= 0 && places[j] >= 0 && beside[i][j] ? harm[places[i]][places[j]] : 0;
      }
    }
    return cost;
  }

  /** Places the free paints one after the other, those that do or suffer most harm first. */
  private void descend(int[] places, int[] free, int next, double cost) {
    if (next == free.length) {
      if (cost < bestCost - ROUNDING) {
        bestCost = cost;
        best = places.clone();
      }
      return;
    }
    double least = cost + least(places, free, next, bestCost - ROUNDING - cost);
    if (least >= bestCost - ROUNDING) {
      return;
    }
    if (effort > EFFORT) {
      open = Math.min(open, least);
      return;
    }
    if (++branches % QUESTION == 0 && cancelled.getAsBoolean()) {
      throw new CancellationException("order no longer wanted");
    }
    int placed = free[next];
    double[][] burden = burdens[next];
    for (int well = 0; well < size; well++) {
      if (places[well] < 0
          && kind[placed] == kind[well]
          && cost + burden[placed][well] < bestCost - ROUNDING) {
        places[well] = placed;
        burden(free, next, well);
        descend(places, free, next + 1, cost + burden[placed][well]);
        places[well] = -1;
      }
    }
  }

  /** The burdens once the next paint lies in a well. */
  private void burden(int[] free, int next, int well) {
    double[] harms = harm[free[next]];
    boolean[] near = beside[well];
    for (int i = next + 1; i < free.length; i++) {
      int paint = free[i];
      double[] before = burdens[next][paint];
      double[] after = burdens[next + 1][paint];
      for (int other = 0; other < size; other++) {
        after[other] = near[other] ? before[other] + harms[paint] : before[other];
      }
    }
    effort += (long) (free.length - next) * size;
  }

  private double added(int[] places, int well, int paint) {
    double added = 0;
    for (int other = 0; other < size; other++) {
      if (other != well && places[other] >= 0 && beside[well][other]) {
        added += harm[paint][places[other]];
      }
    }
    return added;
  }

  /** What the paints not yet placed cost at least; no closer once it is {@code enough}. */
  private double least(int[] places, int[] free, int next, double enough) {
    double[][] burden = burdens[next];
    double sum = 0;
    for (int i = next; i < free.length; i++) {
      int paint = free[i];
      double least = Double.POSITIVE_INFINITY;
      for (int well = 0; well < size; well++) {
        if (places[well] < 0 && kind[paint] == kind[well]) {
          least = Math.min(least, burden[paint][well]);
        }
      }
      rowLeast[paint] = least;
      sum += least;
    }
    effort += (long) (free.length - next) * size;
    for (int well = 0; well < size && sum < enough; well++) {
      if (places[well] < 0) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = next; i < free.length; i++) {
          int paint = free[i];
          if (kind[paint] == kind[well]) {
            least = Math.min(least, burden[paint][well] - rowLeast[paint]);
          }
        }
        sum += least;
      }
    }
    return sum;
  }
}
