package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.List;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.mud.Mud;
import org.panwright.mixing.MixGrid;

/** All searches over one lineup, one after the other; what they find has no remedies yet. */
public final class Searches {
  private Searches() {}

  /**
   * What there is to find in a lineup, in the order of the searches.
   *
   * @param standIns for each paint the mix of the others that comes nearest
   * @param balance how the lineup is made up
   * @param grid all pairs of the lineup's paints
   * @param mud the mud of those pairs
   */
  public static List<Finding> all(
      Case open, List<StandIn> standIns, Balance balance, MixGrid grid, Mud mud) {
    return found(open, balance, grid, mud, SpareSearch.of(open, standIns), WishSearch.of(open));
  }

  /**
   * The same of a lineup after an exchange, wishes and all spare paints but near twins aside.
   *
   * @param grid all pairs of the lineup's paints
   * @param mud the mud of those pairs
   */
  public static List<Finding> afterExchange(Case then, MixGrid grid, Mud mud) {
    return found(then, then.balance(), grid, mud, NearTwinsSearch.of(then), List.of());
  }

  private static List<Finding> found(
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
