package org.panwright.analysis.fill;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Tubes to buy so that a paint is enough.
 *
 * @param items sizes with how many of each, largest first
 */
public record Purchase(List<Item> items) {
  /**
   * Tubes of one size.
   *
   * @param sizeMl above 0
   * @param price of one, if known
   * @param count 1 or more
   */
  public record Item(double sizeMl, OptionalDouble price, int count) {}

  public Purchase {
    items = List.copyOf(items);
  }

  /** Wet paint in all of them. */
  public double ml() {
    return items.stream().mapToDouble(item -> item.count() * item.sizeMl()).sum();
  }

  /** What they cost together; empty if a price is not known. */
  public OptionalDouble cost() {
    boolean known = items.stream().allMatch(item -> item.price().isPresent());
    return known
        ? OptionalDouble.of(
            items.stream().mapToDouble(i -> i.count() * i.price().getAsDouble()).sum())
        : OptionalDouble.empty();
  }
}
