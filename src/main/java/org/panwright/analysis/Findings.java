package org.panwright.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.panwright.mixing.Portion;

/** Brings the findings of all searches together, worst first. */
final class Findings {
  private Findings() {}

  static List<Finding> of(Case open, List<StandIn> standIns, Balance balance) {
    if (open.members().length == 0) {
      return List.of(new EmptyLineup(open.atHand().isEmpty()));
    }
    List<Finding> findings = new ArrayList<>(HueGapSearch.of(open));
    findings.addAll(NoDarkSearch.of(open));
    findings.addAll(FadingSearch.of(open));
    findings.addAll(spare(open, standIns));
    findings.addAll(LopsidedSearch.of(balance));
    findings.addAll(MetalsSearch.of(open));
    findings.addAll(WishSearch.of(open));
    findings.addAll(NatureSearch.of(open));
    findings.sort(Comparator.comparingDouble(Finding::severity).reversed());
    return findings;
  }

  /**
   * Paints the lineup could spare, each for one reason only: a near twin, a stand-in of the same
   * colour for a paint that earns little else, or that it earns next to nothing.
   */
  private static List<Finding> spare(Case open, List<StandIn> standIns) {
    List<Finding> found = new ArrayList<>();
    Set<String> explained = new HashSet<>();
    Set<String> spared = new HashSet<>();
    Set<String> needed = new HashSet<>();
    for (NearTwins twins : NearTwinsSearch.of(open)) {
      found.add(twins);
      explained.add(twins.keepPaintId());
      explained.add(twins.sparePaintId());
      spared.add(twins.sparePaintId());
    }
    for (StandIn standIn : replaceable(open, standIns)) {
      List<String> from = standIn.recipe().portions().stream().map(Portion::paintId).toList();
      boolean stands = !needed.contains(standIn.paintId()) && Collections.disjoint(from, spared);
      if (stands && explained.add(standIn.paintId())) {
        found.add(standIn);
        spared.add(standIn.paintId());
        needed.addAll(from);
      }
    }
    for (Earning earning : open.figures().earnings()) {
      if (earning.isPassenger() && explained.add(earning.paintId())) {
        found.add(new Passenger(earning, open.empty(earning.paintId())));
      }
    }
    return found;
  }

  /** Stand-ins of the same colour for paints that earn little, nearest first. */
  private static List<StandIn> replaceable(Case open, List<StandIn> standIns) {
    Set<String> earnLittle = new HashSet<>();
    for (Earning earning : open.figures().earnings()) {
      if (earning.isLittle()) {
        earnLittle.add(earning.paintId());
      }
    }
    return standIns.stream()
        .filter(standIn -> standIn.isSame() && earnLittle.contains(standIn.paintId()))
        .sorted(Comparator.comparingDouble(StandIn::worst))
        .toList();
  }
}
