package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.panwright.analysis.finding.AlsoSpare;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.finding.Passenger;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.worth.Earning;
import org.panwright.mixing.Portion;

/**
 * Paints the lineup could spare, each for one reason only: a near twin, a stand-in for a paint that
 * earns little else, or that it earns next to nothing.
 *
 * <p>Such findings lean on each other: each is right with all other paints in the box. The best
 * {@value #TOLD} that are not muted are told, near twins besides; the others are named in one
 * {@link AlsoSpare}.
 */
final class SpareSearch {
  /** How many stand-ins and passengers are told at once. */
  static final int TOLD = 2;

  private final Case open;
  private final List<Finding> found = new ArrayList<>();
  private final Set<String> explained = new HashSet<>();
  private final Set<String> spared = new HashSet<>();
  private final Set<String> needed = new HashSet<>();

  private SpareSearch(Case open) {
    this.open = open;
  }

  static List<Finding> of(Case open, List<StandIn> standIns) {
    SpareSearch search = new SpareSearch(open);
    search.twins();
    List<Finding> told = new ArrayList<>(search.found);
    search.found.clear();
    search.mixed(standIns);
    search.passengers();
    search.found.sort(Comparator.comparingDouble(Finding::severity).reversed());
    told.addAll(best(search.found, open::isMuted));
    return told;
  }

  /** The best of these, the muted ones, and the rest in one. */
  static List<Finding> best(List<Finding> found, Predicate<Finding> muted) {
    List<Finding> told = new ArrayList<>();
    List<String> rest = new ArrayList<>();
    int shown = 0;
    for (Finding finding : found) {
      if (muted.test(finding)) {
        told.add(finding);
      } else if (shown < TOLD) {
        shown++;
        told.add(finding);
      } else {
        rest.add(finding.paintIds().get(0));
      }
    }
    if (!rest.isEmpty()) {
      told.add(new AlsoSpare(rest));
    }
    return told;
  }

  private void twins() {
    for (NearTwins twins : NearTwinsSearch.of(open)) {
      found.add(twins);
      explained.add(twins.keepPaintId());
      explained.add(twins.sparePaintId());
      spared.add(twins.sparePaintId());
    }
  }

  private void mixed(List<StandIn> standIns) {
    for (StandIn standIn : replaceable(standIns)) {
      List<String> from = standIn.recipe().portions().stream().map(Portion::paintId).toList();
      boolean stands = !needed.contains(standIn.paintId()) && Collections.disjoint(from, spared);
      if (stands && explained.add(standIn.paintId())) {
        found.add(standIn);
        spared.add(standIn.paintId());
        needed.addAll(from);
      }
    }
  }

  private void passengers() {
    for (Earning earning : open.earnings()) {
      if (earning.isPassenger() && explained.add(earning.paintId())) {
        found.add(new Passenger(earning, open.seats().empty(earning.paintId())));
      }
    }
  }

  /** Close stand-ins for paints that earn little, nearest first. */
  private List<StandIn> replaceable(List<StandIn> standIns) {
    Set<String> earnLittle = new HashSet<>();
    for (Earning earning : open.earnings()) {
      if (earning.isLittle()) {
        earnLittle.add(earning.paintId());
      }
    }
    return standIns.stream()
        .filter(standIn -> standIn.isClose() && earnLittle.contains(standIn.paintId()))
        .sorted(Comparator.comparingDouble(StandIn::worst))
        .toList();
  }
}
