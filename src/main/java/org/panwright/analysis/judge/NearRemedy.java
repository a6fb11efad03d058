package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.Remedy;
import org.panwright.analysis.search.Case;
import org.panwright.analysis.search.MetalsSearch;
import org.panwright.analysis.search.NatureSearch;
import org.panwright.analysis.worth.Earning;
import org.panwright.paint.Paint;

/** Finds the nearest owned paint without a metal, or without an effect on mixes. */
final class NearRemedy {
  /** A replacement farther off than this is another colour, ΔE00. */
  private static final double NEAR = 10;

  /** Which metal is given up first: the one boxes are most often kept free of (common practice). */
  private static final String CADMIUM = "Cd";

  private NearRemedy() {}

  /** The nearest paint without metals that call for care; cadmium is given up first. */
  static Optional<Remedy> of(Case open, Trials trials, Metals metals) {
    List<String> cadmium = metals.holders().getOrDefault(CADMIUM, List.of());
    Predicate<Paint> free = paint -> MetalsSearch.metals(List.of(paint), open.library()).isEmpty();
    List<Swap> swaps = new ArrayList<>(nearest(open, cadmium, free));
    swaps.addAll(
        nearest(
            open, metals.paintIds().stream().filter(id -> !cadmium.contains(id)).toList(), free));
    return trials.first(metals, 1, swaps);
  }

  /** The nearest paint without the effect; or else out with one that earns little. */
  static Optional<Remedy> of(Case open, Trials trials, Nature nature) {
    Predicate<Paint> free = paint -> !NatureSearch.has(nature.effect(), open, paint);
    List<Swap> swaps = new ArrayList<>(nearest(open, nature.paintIds(), free));
    for (Earning earning : open.earnings()) {
      if (earning.isLittle() && nature.paintIds().contains(earning.paintId())) {
        open.seats()
            .empty(earning.paintId())
            .ifPresent(edit -> swaps.add(new Swap(earning.paintId(), Optional.empty(), edit)));
      }
    }
    return trials.first(nature, 1, swaps);
  }

  private static List<Swap> nearest(Case open, List<String> leaving, Predicate<Paint> free) {
    record Tried(Swap swap, double apart) {}
    List<Tried> tried = new ArrayList<>();
    for (String id : leaving) {
      for (Paint paint : open.atHand()) {
        double apart = open.apart(id, paint.id());
        if (apart < NEAR && open.seats().sitsOnce(id) && free.test(paint)) {
          tried.add(new Tried(Swap.of(open, id, paint.id()), apart));
        }
      }
    }
    return tried.stream()
        .sorted(Comparator.comparingDouble(Tried::apart))
        .map(Tried::swap)
        .toList();
  }
}
