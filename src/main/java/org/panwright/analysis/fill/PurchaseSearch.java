package org.panwright.analysis.fill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds the cheapest tubes that hold at least so much.
 *
 * <pre>
 * least Σ nᵢ·priceᵢ   with Σ nᵢ·sizeᵢ ≥ short, nᵢ whole and ≥ 0
 * </pre>
 *
 * <p>Of equal cost the least paint left over, then the fewest tubes. Where any price is unknown all
 * are left aside and the least paint left over decides. Exact: all numbers of all but the smallest
 * size are tried, as far as they could pay, and the smallest fills up.
 */
final class PurchaseSearch {
  /** A size on sale. */
  record Offer(double sizeMl, OptionalDouble price) {}

  private static final double HAIR = 1e-9;

  private final List<Offer> offers;
  private final boolean priced;
  private int[] best;

  /**
   * @param offers at least one; sizes above 0
   */
  private PurchaseSearch(List<Offer> offers) {
    this.offers = offers.stream().sorted(Comparator.comparing(Offer::sizeMl).reversed()).toList();
    priced = offers.stream().allMatch(offer -> offer.price().isPresent());
  }

  /** The cheapest purchase of at least {@code shortMl} out of these offers. */
  static Purchase cheapest(double shortMl, List<Offer> offers) {
    PurchaseSearch search = new PurchaseSearch(offers);
    search.tryAll(new int[offers.size()], 0, shortMl);
    List<Purchase.Item> items = new ArrayList<>();
    for (int i = 0; i < search.best.length; i++) {
      if (search.best[i] > 0) {
        Offer offer = search.offers.get(i);
        items.add(new Purchase.Item(offer.sizeMl(), offer.price(), search.best[i]));
      }
    }
    return new Purchase(items);
  }

  private void tryAll(int[] counts, int size, double missingMl) {
    int enough = (int) Math.max(0, Math.ceil((missingMl - HAIR) / offers.get(size).sizeMl()));
    if (size == offers.size() - 1) {
      counts[size] = enough;
      if (best == null || isBetter(counts)) {
        best = counts.clone();
      }
      return;
    }
    for (int count = 0; count <= enough; count++) {
      counts[size] = count;
      tryAll(counts, size + 1, missingMl - count * offers.get(size).sizeMl());
    }
  }

  private boolean isBetter(int[] counts) {
    double[] now = merits(counts);
    double[] before = merits(best);
    for (int i = 0; i < now.length; i++) {
      if (Math.abs(now[i] - before[i]) > HAIR) {
        return now[i] < before[i];
      }
    }
    return false;
  }

  /** Cost, paint and tubes; the less the better, the first that differs decides. */
  private double[] merits(int[] counts) {
    double cost = 0;
    double ml = 0;
    double tubes = 0;
    for (int i = 0; i < counts.length; i++) {
      cost += priced ? counts[i] * offers.get(i).price().getAsDouble() : 0;
      ml += counts[i] * offers.get(i).sizeMl();
      tubes += counts[i];
    }
    return new double[] {cost, ml, tubes};
  }
}
