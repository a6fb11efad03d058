package org.panwright.analysis.fill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.StockEdit;

/**
 * How to fill the boxes of one or several lineups out of the tubes there are.
 *
 * <p>Facts only; formulas and sources stand in {@code docs/numbers.md}, "Filling".
 *
 * @param lineupIds the lineups to be filled, in the order given
 * @param sharing how scarce paint is shared
 * @param wells every well of theirs that holds a paint, in that order and the order of the boxes
 * @param tubes every tube of the paints concerned, in the order they are used
 * @param paints the paints in the order of the wells, each once
 */
public record FillPlan(
    List<String> lineupIds,
    Sharing sharing,
    List<PlannedWell> wells,
    List<TubeDraw> tubes,
    List<PaintDemand> paints) {
  public FillPlan {
    lineupIds = List.copyOf(lineupIds);
    wells = List.copyOf(wells);
    tubes = List.copyOf(tubes);
    paints = List.copyOf(paints);
  }

  /**
   * Plans for some lineups of a kit, each named once.
   *
   * @throws IllegalArgumentException if the kit has no such lineup
   */
  public static FillPlan of(Kit kit, List<String> lineupIds, Sharing sharing) {
    return new FillPlanning(kit, lineupIds, sharing).plan();
  }

  /** The wells that get paint. */
  public List<PlannedWell> toFill() {
    return wells.stream().filter(well -> well.givenMl() > 0).toList();
  }

  /** The paints that run short, those that lack most first. */
  public List<PaintDemand> runningShort() {
    return paints.stream()
        .filter(paint -> paint.purchase().isPresent())
        .sorted((a, b) -> Double.compare(b.shortMl(), a.shortMl()))
        .toList();
  }

  /** What is asked of a paint. */
  public Optional<PaintDemand> demand(String paintId) {
    return paints.stream().filter(paint -> paint.paintId().equals(paintId)).findFirst();
  }

  /** What the paint taken out of the tubes had cost; empty if any price is not known. */
  public OptionalDouble usedCost() {
    return sum(paints.stream().filter(p -> p.needMl() > 0).map(PaintDemand::usedCost).toList());
  }

  /** What all there is to buy costs; empty if any price is not known. */
  public OptionalDouble purchaseCost() {
    return sum(paints.stream().flatMap(p -> p.purchase().stream()).map(Purchase::cost).toList());
  }

  /** Days until the last layer of all is dry, all wells being filled side by side. */
  public double dryingDays() {
    return wells.stream().mapToDouble(well -> well.layers().dryingDays()).max().orElse(0);
  }

  /**
   * The edit that fills wells as planned: each remembers what it holds and the day, the tubes give
   * what went in. Pans of wells that an earlier lineup of the plan fills are laid aside, because a
   * well holds one pan.
   *
   * @param kit the kit the plan was made of
   * @param day the day of the last layer
   * @param done which wells were filled
   */
  public StockEdit.FillWells carriedOut(Kit kit, LocalDate day, Predicate<PlannedWell> done) {
    double shrinkage = kit.stock().practice().shrinkage();
    Map<String, Double> left = new HashMap<>();
    List<FilledWell> filled = new ArrayList<>();
    List<FilledWell> aside = new ArrayList<>();
    for (PlannedWell well : wells) {
      if (well.givenMl() > 0 && done.test(well)) {
        double ml = well.reachedMl(shrinkage);
        (well.spare() ? aside : filled)
            .add(new FilledWell(well.boxId(), well.wellId(), well.paintId(), day, ml, ml));
        left.merge(well.paintId(), well.givenMl(), Double::sum);
      }
    }
    Map<String, Double> used = new HashMap<>();
    for (TubeDraw tube : tubes) {
      double ml = Math.min(tube.beforeMl(), left.getOrDefault(tube.paintId(), 0.0));
      if (ml > 0) {
        used.put(tube.tubeId(), ml);
        left.merge(tube.paintId(), -ml, Double::sum);
      }
    }
    return new StockEdit.FillWells(filled, aside, used, day);
  }

  private static OptionalDouble sum(List<OptionalDouble> parts) {
    return parts.stream().allMatch(OptionalDouble::isPresent)
        ? OptionalDouble.of(parts.stream().mapToDouble(OptionalDouble::getAsDouble).sum())
        : OptionalDouble.empty();
  }
}
