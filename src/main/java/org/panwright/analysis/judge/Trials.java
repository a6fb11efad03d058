package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.Remedy;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.mud.DarkestMix;
import org.panwright.analysis.mud.Mud;
import org.panwright.analysis.search.Arrival;
import org.panwright.analysis.search.Case;
import org.panwright.analysis.search.Searches;
import org.panwright.analysis.worth.Abilities;
import org.panwright.analysis.worth.Earning;
import org.panwright.analysis.worth.LeaveOneOut;
import org.panwright.analysis.worth.LineupFigures;
import org.panwright.analysis.worth.SubjectsLost;
import org.panwright.analysis.worth.SubjectsWithout;
import org.panwright.mixing.MixGrid;

/**
 * Tries exchanges of one paint by judging the lineup as it would be; one thread.
 *
 * <p>An exchange is a remedy if the finding it is for lessens by what is asked, if no other kind of
 * finding grows in severity by more than {@value #WORSE} or is new by as much, if no metal is new,
 * and if ring, reach and colours of the place lose less than {@value #LOSS} together. Paints that
 * become spare are not held against it: what the lineup can do does not fall by that.
 */
final class Trials {
  private static final double WORSE = 0.04;
  private static final double LOSS = 0.05;
  private static final double ROUNDING = 1e-9;

  private final Case open;
  private final Bench bench;
  private final Map<String, Double> before = new HashMap<>();
  private final Set<String> metals = new HashSet<>();

  /**
   * @param found what was found in the lineup as it stands
   */
  Trials(Case open, Bench bench, List<Finding> found) {
    this.open = open;
    this.bench = bench;
    for (Finding finding : found) {
      before.merge(kind(finding), finding.severity(), Double::sum);
      if (finding instanceof Metals held) {
        metals.addAll(held.holders().keySet());
      }
    }
  }

  /**
   * The first exchange that is a remedy.
   *
   * @param finding what is to be cured
   * @param fall by how much its extent has to fall
   */
  Optional<Remedy> first(Finding finding, double fall, List<Swap> swaps) {
    for (Swap swap : swaps) {
      if (loss(swap) < LOSS) {
        List<Finding> after = after(swap);
        double left =
            after.stream()
                .filter(other -> kind(other).equals(kind(finding)))
                .filter(other -> isAbout(other, finding, swap))
                .mapToDouble(Finding::extent)
                .sum();
        if (left <= finding.extent() - fall + ROUNDING && !isWorse(after)) {
          return Optional.of(
              new Remedy(
                  Optional.of(swap.leavingId()),
                  swap.arrivingId(),
                  apart(swap),
                  left,
                  swap.edit()));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether a finding after an exchange is the one before it: the newcomer inherits its place. */
  private static boolean isAbout(Finding other, Finding finding, Swap swap) {
    return !(finding instanceof MuddyPaint)
        || Optional.of(other.about()).equals(swap.arrivingId())
        || other.about().equals(finding.about());
  }

  private double apart(Swap swap) {
    return swap.arrivingId().map(coming -> open.apart(swap.leavingId(), coming)).orElse(0.0);
  }

  private boolean isWorse(List<Finding> after) {
    Map<String, Double> sums = new HashMap<>();
    for (Finding other : after) {
      sums.merge(kind(other), other.severity(), Double::sum);
      if (other instanceof Metals held && !metals.containsAll(held.holders().keySet())) {
        return true;
      }
    }
    return sums.entrySet().stream()
        .anyMatch(sum -> sum.getValue() > before.getOrDefault(sum.getKey(), 0.0) + WORSE);
  }

  /** Findings are summed up by this: what white paints do is not what hiding ones do. */
  private static String kind(Finding finding) {
    return finding instanceof Nature nature
        ? finding.kind().code() + nature.effect()
        : finding.kind().code();
  }

  private List<Finding> after(Swap swap) {
    Case then = open.after(swap.edit(), abilities(swap));
    MixGrid grid = bench.gridOf(then.ids());
    return Searches.afterExchange(then, grid, Mud.of(then.table(), grid));
  }

  private Abilities abilities(Swap swap) {
    List<Earning> earnings = new ArrayList<>(open.earnings());
    LineupFigures now = open.figures();
    int member = member(swap);
    if (swap.arrivingId().isEmpty()) {
      earnings.remove(member);
      return new Abilities(
          now.leaving().ringWithout(member), dark(now.darks().without(member)), earnings);
    }
    String arriving = swap.arrivingId().get();
    Arrival arrival = open.arrival(arriving);
    earnings.set(member, earning(arriving, arrival, member));
    return new Abilities(
        arrival.leaving().ringWithout(member), dark(arrival.darks().without(member)), earnings);
  }

  /** What the newcomer earns once another has left: without it there would be neither. */
  private Earning earning(String arriving, Arrival arrival, int member) {
    LeaveOneOut now = open.figures().leaving();
    LeaveOneOut then = arrival.leaving();
    double ringLost = 1 - now.ringSumWithout(member) / then.ringSumWithout(member);
    double cells = then.reach() - then.reachLost()[member];
    double reachLost = 1 - (now.reach() - now.reachLost()[member]) / cells;
    return new Earning(arriving, ringLost, reachLost, SubjectsLost.NONE);
  }

  private Optional<Dark> dark(DarkestMix mix) {
    return mix.find(open.table(), open.kit());
  }

  private int member(Swap swap) {
    return open.ids().indexOf(swap.leavingId());
  }

  /** What ring, reach and colours of the place lose by an exchange, each where it loses. */
  private double loss(Swap swap) {
    int member = member(swap);
    LineupFigures now = open.figures();
    Optional<Arrival> arrival = swap.arrivingId().map(open::arrival);
    LeaveOneOut then = arrival.map(Arrival::leaving).orElse(now.leaving());
    SubjectsWithout subjects = arrival.map(Arrival::subjects).orElse(now.subjects());
    return lost(now.ring().sum(), then.ringSumWithout(member))
        + lost(now.leaving().reach(), then.reach() - then.reachLost()[member])
        + lost(now.subjects().nearness(), subjects.nearnessWithout(member));
  }

  private static double lost(double before, double after) {
    return before > 0 ? Math.max(0, 1 - after / before) : 0;
  }
}
