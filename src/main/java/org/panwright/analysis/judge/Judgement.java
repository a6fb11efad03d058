package org.panwright.analysis.judge;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Muted;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.mud.Mud;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.worth.Earning;
import org.panwright.kit.Kit;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;

/**
 * All that is known of one lineup: its mix grid, its ring and reach against the shelf's, what each
 * paint earns, its findings.
 *
 * @param kit the kit that was judged
 * @param lineupId the lineup that was judged
 * @param table the optics of the whole shelf, in shelf order
 * @param grid all pairs of the lineup's paints, in the order of the wells
 * @param ring the lineup's hue ring
 * @param shelfRing the hue ring of all owned paints and those in the lineup
 * @param reach the lineup's reach
 * @param shelfReach the reach of all owned paints and those in the lineup
 * @param darkest the lineup's darkest dry mix; empty if the lineup is
 * @param earnings what each paint earns, in the order of the wells
 * @param standIns for each paint the mix of the others that comes nearest, in the order of the
 *     wells; empty for fewer than three paints
 * @param mud where pairs lose chroma, and which make greys
 * @param balance how the lineup is made up
 * @param findings what is to be told, worst first
 * @param muted findings that hold but are muted for this lineup, worst first
 */
public record Judgement(
    Kit kit,
    String lineupId,
    OpticsTable table,
    MixGrid grid,
    Ring ring,
    Ring shelfRing,
    Reach reach,
    Reach shelfReach,
    Optional<Dark> darkest,
    List<Earning> earnings,
    List<StandIn> standIns,
    Mud mud,
    Balance balance,
    List<Finding> findings,
    List<Muted> muted) {
  public Judgement {
    standIns = List.copyOf(standIns);
    earnings = List.copyOf(earnings);
    findings = List.copyOf(findings);
    muted = List.copyOf(muted);
  }
}
