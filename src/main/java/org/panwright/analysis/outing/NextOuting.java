package org.panwright.analysis.outing;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.paint.PigmentLibrary;

/** The outing that comes next for a lineup, and what paint it takes. */
public final class NextOuting {
  private NextOuting() {}

  /**
   * The soonest outing with this lineup that is not over and whose paint was not taken; one without
   * a date comes last.
   */
  public static Optional<Outing> of(Kit kit, String lineupId, LocalDate today) {
    return untaken(kit, lineupId)
        .filter(outing -> !day(outing).isBefore(today))
        .min(Comparator.comparing(NextOuting::day));
  }

  /** The last outing with this lineup that is over and whose paint was not taken. */
  public static Optional<Outing> last(Kit kit, String lineupId, LocalDate today) {
    return untaken(kit, lineupId)
        .filter(outing -> day(outing).isBefore(today))
        .max(Comparator.comparing(NextOuting::day));
  }

  private static Stream<Outing> untaken(Kit kit, String lineupId) {
    return kit.outings().stream()
        .filter(outing -> !outing.paintTaken())
        .filter(outing -> outing.lineupId().equals(Optional.of(lineupId)));
  }

  private static LocalDate day(Outing outing) {
    return outing.date().orElse(LocalDate.MAX);
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
