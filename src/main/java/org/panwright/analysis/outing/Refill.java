package org.panwright.analysis.outing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Sharing;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

/**
 * One well to be filled or refilled before an outing.
 *
 * @param wellId the well
 * @param paintId the paint that is to be in it
 * @param why what makes it needed
 * @param nowMl dry paint of it there now
 * @param afterMl what the outing would leave
 * @param targetMl what it holds when filled as planned
 */
public record Refill(
    String wellId, String paintId, Why why, double nowMl, double afterMl, double targetMl) {
  /** What makes a well need paint. */
  public enum Why {
    /** Nothing is in it. */
    EMPTY,
    /** Another paint is in it. */
    OTHER_PAINT,
    /** Its pan is filled and lies beside the box. */
    BESIDE,
    /** Less is in it than the painter keeps as a reserve. */
    LOW,
    /** The outing would leave less than the reserve. */
    LOW_AFTERWARDS
  }

  /**
   * The wells of a lineup that need paint.
   *
   * <p>The reserve is {@code refillBelow · target}.
   *
   * @param usedMl dry paint the outing is to take, by paint id; empty for none
   */
  public static List<Refill> before(Kit kit, Lineup lineup, Map<String, Double> usedMl) {
    FillPlan plan = FillPlan.of(kit, List.of(lineup.id()), Sharing.EVENLY);
    Map<String, Double> worn = Wear.byWell(kit, lineup, usedMl);
    double reserve = kit.stock().practice().refillBelow();
    List<Refill> refills = new ArrayList<>();
    for (PlannedWell well : plan.wells()) {
      double now = well.heldMl();
      double after = Math.max(0, now - worn.getOrDefault(well.wellId(), 0.0));
      reason(kit, well, now, after, reserve * well.targetMl())
          .ifPresent(
              why ->
                  refills.add(
                      new Refill(well.wellId(), well.paintId(), why, now, after, well.targetMl())));
    }
    return List.copyOf(refills);
  }

  private static Optional<Why> reason(
      Kit kit, PlannedWell well, double now, double after, double reserveMl) {
    if (well.beside() && now >= reserveMl) {
      return Optional.of(Why.BESIDE);
    }
    if (well.otherPaintId().isPresent()) {
      return Optional.of(Why.OTHER_PAINT);
    }
    Optional<FilledWell> there = kit.stock().in(well.boxId(), well.wellId());
    if (there.isEmpty() || there.get().leftMl() <= 0) {
      return Optional.of(Why.EMPTY);
    }
    if (now < reserveMl) {
      return Optional.of(Why.LOW);
    }
    return after < reserveMl ? Optional.of(Why.LOW_AFTERWARDS) : Optional.empty();
  }
}
