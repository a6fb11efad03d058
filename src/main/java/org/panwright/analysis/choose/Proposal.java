package org.panwright.analysis.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.kit.Aim;

/**
 * A lineup the program proposes.
 *
 * @param pans ids of the paints for pans, in shelf order
 * @param dabs ids of the paints for dabs: those of which least is used up
 * @param worth 0..1; 1 would be as good as all allowed paints together
 * @param byAim how much each aim adds to the worth
 * @param bound no lineup that keeps to the conditions, and differs enough from the proposals before
 *     it, is worth more than this
 * @param provenBest whether no such lineup is worth more than this one
 * @param ring its hue ring
 * @param reach its reach
 * @param darkest its darkest dry mix
 * @param reasons why each paint is in, those that would be missed most first
 */
public record Proposal(
    List<String> pans,
    List<String> dabs,
    double worth,
    Map<Aim, Double> byAim,
    double bound,
    boolean provenBest,
    Ring ring,
    Reach reach,
    Optional<Dark> darkest,
    List<Reason> reasons) {
  public Proposal {
    pans = List.copyOf(pans);
    dabs = List.copyOf(dabs);
    byAim = Map.copyOf(byAim);
    reasons = List.copyOf(reasons);
  }

  /** All paints, pans first. */
  public List<String> paints() {
    List<String> paints = new ArrayList<>(pans);
    paints.addAll(dabs);
    return paints;
  }
}
