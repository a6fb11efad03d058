package org.panwright.analysis.fill;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a fill plan asks of one paint. All volumes are of wet paint.
 *
 * @param paintId the paint
 * @param needMl what its wells need
 * @param haveMl what is left in its tubes
 * @param usedCost what the paint taken out of the tubes had cost; empty if a price is not known
 * @param fillCost what filling a half pan as usual costs, from the tubes there are; empty if no
 *     price is known
 * @param purchase what to buy where it runs short
 */
public record PaintDemand(
    String paintId,
    double needMl,
    double haveMl,
    OptionalDouble usedCost,
    OptionalDouble fillCost,
    Optional<Purchase> purchase) {
  /** What is missing. */
  public double shortMl() {
    return Math.max(0, needMl - haveMl);
  }
}
