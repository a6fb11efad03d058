package org.panwright.analysis.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.mud.DarkestMix;
import org.panwright.analysis.mud.DarkestWithout;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.reach.Sinks;
import org.panwright.kit.Kit;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.OpticsTable;

/**
 * What a lineup can mix, and what without each of its paints, from one walk over its net.
 *
 * @param ring its hue ring
 * @param reach its reach
 * @param darkest its darkest mix, unless it is empty
 * @param leaving ring and reach without each paint, to be led on
 * @param darks the darkest mix without each paint, to be led on
 * @param subjects the colours of its places without each paint, to be led on
 * @param earnings what each paint earns, in the order of the wells
 */
public record LineupFigures(
    Ring ring,
    Reach reach,
    Optional<Dark> darkest,
    LeaveOneOut leaving,
    DarkestWithout darks,
    SubjectsWithout subjects,
    List<Earning> earnings) {
  /**
   * The figures of a lineup.
   *
   * @param paints the lineup's paints, by number in the table, in the order of the wells
   * @param places the colours of the places it is taken to
   */
  public static LineupFigures of(
      OpticsTable table, NetWalk walk, int[] paints, Kit kit, List<SubjectColour> places) {
    Ring.Gatherer ring = new Ring.Gatherer();
    Reach.Gatherer reach = new Reach.Gatherer();
    DarkestMix darkest = new DarkestMix();
    LeaveOneOut leaving = new LeaveOneOut(paints, table.size());
    DarkestWithout darks = new DarkestWithout(paints);
    SubjectsWithout subjects = new SubjectsWithout(places, paints, table.size());
    walk.all(paints, Sinks.of(ring, reach, darkest, leaving, darks, subjects));
    return new LineupFigures(
        ring.ring(),
        reach.reach(),
        darkest.find(table, kit),
        leaving,
        darks,
        subjects,
        earnings(table, paints, ring.ring(), leaving, subjects));
  }

  /**
   * What each paint earns.
   *
   * <pre>
   * ringLost  = 1 − Σ ring without it / Σ ring
   * reachLost = cells only it reaches / all cells
   * </pre>
   *
   * <p>and of the subject colours as {@link SubjectsWithout} says.
   */
  private static List<Earning> earnings(
      OpticsTable table, int[] paints, Ring ring, LeaveOneOut leaving, SubjectsWithout subjects) {
    double sum = ring.sum();
    int[] lost = leaving.reachLost();
    List<Earning> earnings = new ArrayList<>();
    for (int member = 0; member < paints.length; member++) {
      earnings.add(
          new Earning(
              table.ids().get(paints[member]),
              sum == 0 ? 0 : Math.max(0, 1 - leaving.ringSumWithout(member) / sum),
              (double) lost[member] / leaving.reach(),
              subjects.lost(member)));
    }
    return earnings;
  }
}
