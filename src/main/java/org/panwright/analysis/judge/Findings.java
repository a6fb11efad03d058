package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.finding.EmptyLineup;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Muted;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.mud.Mud;
import org.panwright.analysis.search.Case;
import org.panwright.analysis.search.Searches;
import org.panwright.mixing.MixGrid;

/**
 * The findings of all searches together, worst first.
 *
 * @param told those the painter is to be told
 * @param muted those that hold but are muted for this lineup
 */
record Findings(List<Finding> told, List<Muted> muted) {
  static Findings of(Case open, List<StandIn> standIns, Balance balance, MixGrid grid, Mud mud) {
    List<Finding> told = new ArrayList<>();
    List<Muted> muted = new ArrayList<>();
    for (Finding finding : all(open, standIns, balance, grid, mud)) {
      open.mute(finding)
          .ifPresentOrElse(
              mute -> muted.add(new Muted(finding, mute.reason())), () -> told.add(finding));
    }
    return new Findings(told, muted);
  }

  private static List<Finding> all(
      Case open, List<StandIn> standIns, Balance balance, MixGrid grid, Mud mud) {
    if (open.members().length == 0) {
      return List.of(new EmptyLineup(open.atHand().isEmpty()));
    }
    List<Finding> findings = Searches.all(open, standIns, balance, grid, mud);
    findings.sort(Comparator.comparingDouble(Finding::severity).reversed());
    return Remedies.of(open, findings);
  }
}
