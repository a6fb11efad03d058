package org.panwright.mixing;

import java.util.List;

/**
 * Strength parts of two paints in a mix, small whole numbers above 0.
 *
 * @param first parts of the first paint
 * @param second parts of the second
 */
public record Ratio(int first, int second) {
  /**
   * The ratios of the mix grid and of the reach net, from the first paint leading to the second
   * leading.
   */
  public static final List<Ratio> GRID =
      List.of(
          new Ratio(6, 1),
          new Ratio(3, 1),
          new Ratio(3, 2),
          new Ratio(1, 1),
          new Ratio(2, 3),
          new Ratio(1, 3),
          new Ratio(1, 6));

  /** The place of 1:1 in {@link #GRID}. */
  public static final int EVEN = 3;

  public Ratio {
    if (first <= 0 || second <= 0) {
      throw new IllegalArgumentException("parts must be above 0, were " + first + ":" + second);
    }
  }

  /** The first paint's share of all parts, 0..1. */
  public double firstShare() {
    return (double) first / (first + second);
  }
}
