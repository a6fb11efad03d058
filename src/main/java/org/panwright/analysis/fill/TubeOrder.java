package org.panwright.analysis.fill;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.panwright.kit.Tube;

/**
 * The order in which tubes of one paint are used up.
 *
 * <p>Cheapest paint first, because then what is used costs least: any litre taken from a dearer
 * tube while a cheaper one holds some could be exchanged at a gain. A tube without a price counts
 * as costing the mean of the others. At the same price opened tubes go before new ones, the longest
 * opened first, then the emptier.
 */
final class TubeOrder {
  private TubeOrder() {}

  static List<Tube> of(List<Tube> tubes) {
    double mean =
        tubes.stream()
            .filter(tube -> tube.pricePerMl().isPresent())
            .mapToDouble(tube -> tube.pricePerMl().getAsDouble())
            .average()
            .orElse(0);
    return tubes.stream()
        .sorted(
            Comparator.comparingDouble((Tube tube) -> tube.pricePerMl().orElse(mean))
                .thenComparing(tube -> tube.opened().orElse(LocalDate.MAX))
                .thenComparingDouble(Tube::leftMl))
        .toList();
  }
}
