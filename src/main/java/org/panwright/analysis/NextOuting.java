package org.panwright.analysis;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.paint.PigmentLibrary;

/** The outing that comes next for a lineup, and what paint it takes. */
public final class NextOuting {
  private NextOuting() {}

  /** The soonest outing with this lineup that is not over; one without a date comes last. */
  public static Optional<Outing> of(Kit kit, String lineupId, LocalDate today) {
    return kit.outings().stream()
        .filter(outing -> outing.lineupId().equals(Optional.of(lineupId)))
        .filter(outing -> !outing.date().orElse(LocalDate.MAX).isBefore(today))
        .min(Comparator.comparing(outing -> outing.date().orElse(LocalDate.MAX)));
  }

  /**
   * What an outing takes of each paint, in ml, by paint id.
   *
   * @param cancelled asked now and then
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public static Map<String, Double> use(
      Kit kit, Outing outing, PigmentLibrary library, BooleanSupplier cancelled) {
    Map<String, Double> used = new HashMap<>();
    PackingNeeds.of(kit, outing, library, cancelled)
        .paints()
        .forEach(paint -> used.merge(paint.paintId(), paint.useMl(), Double::sum));
    return used;
  }
}
