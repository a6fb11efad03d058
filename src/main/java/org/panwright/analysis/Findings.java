package org.panwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
    List<Finding> findings =
        found(open, balance, grid, mud, SpareSearch.of(open, standIns), WishSearch.of(open));
    findings.sort(Comparator.comparingDouble(Finding::severity).reversed());
    return Remedies.of(open, findings);
  }

  /**
   * What the searches find, in their order and without remedies.
   *
   * @param spare what was found of paints that could be spared
   * @param wishes what was found of paints wished for
   */
  static List<Finding> found(
      Case open,
      Balance balance,
      MixGrid grid,
      Mud mud,
      List<? extends Finding> spare,
      List<? extends Finding> wishes) {
    List<Finding> findings = new ArrayList<>(HueGapSearch.of(open));
    findings.addAll(DarkSearch.of(open, grid));
    findings.addAll(FadingSearch.of(open));
    findings.addAll(spare);
    findings.addAll(MuddySearch.of(mud));
    findings.addAll(LopsidedSearch.of(open, balance));
    findings.addAll(MetalsSearch.of(open));
    findings.addAll(wishes);
    findings.addAll(NatureSearch.of(open));
    return findings;
  }
}
