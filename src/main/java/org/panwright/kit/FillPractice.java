package org.panwright.kit;

/**
 * How the painter fills pans; the figures are usual practice and all may be changed.
 *
 * @param fullHeight the share of a pan's inner height a full pan reaches once dry, above 0 up to 1;
 *     a brimful pan sticks to the lid
 * @param layers at least so many, 1..12
 * @param dryingDays each layer dries open, 0..60
 * @param shrinkage share of its volume wet paint loses on drying, 0..0.8
 * @param dabMl dry paint of a dab, above 0 up to 5
 * @param refillBelow a well is refilled when less than this share of a full one is left, 0..1
 */
public record FillPractice(
    double fullHeight,
    int layers,
    double dryingDays,
    double shrinkage,
    double dabMl,
    double refillBelow) {
  /**
   * Usual practice: not to the brim, in thirds, each layer dry after some days, a third lost on
   * drying (25–40 %), a dab of 0.2 ml (0.1–0.3).
   */
  public static final FillPractice USUAL = new FillPractice(0.85, 3, 3, 0.33, 0.2, 0.3);

  public FillPractice {
    requireWithin("full height", fullHeight, 0.05, 1);
    requireWithin("layers", layers, 1, 12);
    requireWithin("drying days", dryingDays, 0, 60);
    requireWithin("shrinkage", shrinkage, 0, 0.8);
    requireWithin("dab", dabMl, 0.01, 5);
    requireWithin("refill below", refillBelow, 0, 1);
  }

  /**
   * The wet paint that dries to so much, in ml: {@code dry / (1 − shrinkage)}.
   *
   * <p>2 ml dry at a third lost take 3 ml from the tube.
   */
  public double wetMl(double dryMl) {
    return dryMl / (1 - shrinkage);
  }

  private static void requireWithin(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          "%s must lie in %s..%s, was %s".formatted(what, low, high, value));
    }
  }
}
