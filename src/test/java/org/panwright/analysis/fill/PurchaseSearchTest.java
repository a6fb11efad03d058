package org.panwright.analysis.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PurchaseSearchTest {
  /** Worked out by hand. */
  @ParameterizedTest(name = "{0} ml short: {1} small, {2} large")
  @CsvSource({"4,  1, 0", "7,  2, 0", "12, 0, 1", "17, 1, 1", "31, 1, 2"})
  void theCheapestTubesAreFound(double shortMl, int small, int large) {
    Purchase found = PurchaseSearch.cheapest(shortMl, List.of(offer(5, 6), offer(15, 13)));
    assertThat(count(found, 5)).isEqualTo(small);
    assertThat(count(found, 15)).isEqualTo(large);
  }

  /** At the same cost as little as possible is left over: two of 5 ml, not one of 15. */
  @Test
  void ofEqualCostTheLeastIsLeftOver() {
    Purchase found = PurchaseSearch.cheapest(7, List.of(offer(5, 6), offer(15, 12)));
    assertThat(count(found, 5)).isEqualTo(2);
    assertThat(found.cost().getAsDouble()).isEqualTo(12);
  }

  /** A dynamic programme over tenths of a millilitre, as textbooks give for covering knapsacks. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void nothingIsCheaper(long seed) {
    Random random = new Random(seed);
    List<PurchaseSearch.Offer> offers = new ArrayList<>();
    for (double size : new double[] {5, 7.5, 10, 14, 37}) {
      offers.add(offer(size, 3 + random.nextInt(20)));
    }
    int tenths = 5 + random.nextInt(600);
    double[] least = new double[tenths + 1];
    for (int ml = 1; ml <= tenths; ml++) {
      least[ml] = Double.POSITIVE_INFINITY;
      for (PurchaseSearch.Offer offer : offers) {
        int rest = Math.max(0, ml - (int) Math.round(10 * offer.sizeMl()));
        least[ml] = Math.min(least[ml], least[rest] + offer.price().getAsDouble());
      }
    }
    Purchase found = PurchaseSearch.cheapest(tenths / 10.0, offers);
    assertThat(found.cost().getAsDouble()).isCloseTo(least[tenths], within(1e-9));
    assertThat(found.ml()).isGreaterThanOrEqualTo(tenths / 10.0 - 1e-9);
  }

  private static PurchaseSearch.Offer offer(double size, double price) {
    return new PurchaseSearch.Offer(size, OptionalDouble.of(price));
  }

  private static int count(Purchase purchase, double size) {
    return purchase.items().stream()
        .filter(item -> item.sizeMl() == size)
        .mapToInt(Purchase.Item::count)
        .sum();
  }
}
