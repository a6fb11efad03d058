package org.panwright.analysis.choose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.mud.DarkestMix;
import org.panwright.analysis.reach.HueArc;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.reach.Sinks;
import org.panwright.kit.Aim;
import org.panwright.kit.Kit;
import org.panwright.mixing.OpticsTable;

/** Turns a set of candidates into a proposal: what goes to dabs, and why each paint is in. */
final class ProposalMaker {
  private final OpticsTable table;
  private final NetWalk walk;
  private final Kit kit;
  private final Cover cover;
  private final Conditions conditions;
  private final Effort effort = new Effort(Long.MAX_VALUE, () -> false, share -> {});

  ProposalMaker(OpticsTable table, NetWalk walk, Kit kit, Cover cover, Conditions conditions) {
    this.table = table;
    this.walk = walk;
    this.kit = kit;
    this.cover = cover;
    this.conditions = conditions;
  }

  List<String> ids(long set) {
    return java.util.Arrays.stream(LineupSearch.members(set)).mapToObj(table.ids()::get).toList();
  }

  double worth(long set) {
    return cover.worth(bits(set));
  }

  private long[] bits(long set) {
    return cover.bits(LineupSearch.members(set), effort);
  }

  Proposal of(long set, Limits limits, double bound, boolean proven) {
    int[] members = LineupSearch.members(set);
    long[] bits = bits(set);
    Ring.Gatherer ring = new Ring.Gatherer();
    Reach.Gatherer reach = new Reach.Gatherer();
    DarkestMix darkest = new DarkestMix();
    walk.all(members, Sinks.of(ring, reach, darkest));
    List<Reason> reasons = new ArrayList<>();
    for (int member : members) {
      reasons.add(reason(set, member, bits, limits));
    }
    List<Integer> dabs = dabs(members, reasons);
    reasons.sort(Comparator.comparingDouble(Reason::lost).reversed());
    return new Proposal(
        ids(members, dabs, false),
        ids(members, dabs, true),
        cover.worth(bits),
        cover.byAim(bits),
        bound,
        proven,
        ring.ring(),
        reach.reach(),
        darkest.find(table, kit),
        reasons);
  }

  private List<String> ids(int[] members, List<Integer> dabs, boolean wanted) {
    return java.util.Arrays.stream(members)
        .filter(member -> dabs.contains(member) == wanted)
        .mapToObj(table.ids()::get)
        .toList();
  }

  /**
   * The paints of which least is used up: strong ones that little depends on.
   *
   * <pre>
   * use(x) = tintLoad(x) · (1/n + lost(x) / Σ lost) / 2
   * </pre>
   */
  private List<Integer> dabs(int[] members, List<Reason> reasons) {
    double all = reasons.stream().mapToDouble(Reason::lost).sum();
    Map<Integer, Double> use = new HashMap<>();
    for (int i = 0; i < members.length; i++) {
      double share = all == 0 ? 0 : reasons.get(i).lost() / all;
      use.put(members[i], table.tintLoad(members[i]) * (1.0 / members.length + share) / 2);
    }
    return use.entrySet().stream()
        .sorted(
            Map.Entry.<Integer, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
        .limit(conditions.dabs())
        .map(Map.Entry::getKey)
        .toList();
  }

  private Reason reason(long set, int member, long[] bits, Limits limits) {
    long without = set & ~(1L << member);
    long[] left = bits(without);
    Map<Aim, Double> before = cover.byAim(bits);
    Map<Aim, Double> after = cover.byAim(left);
    Aim most = Aim.RING;
    for (Aim aim : Aim.values()) {
      if (before.get(aim) - after.get(aim) > before.get(most) - after.get(most)) {
        most = aim;
      }
    }
    double worth = cover.worth(bits);
    Optional<String> instead = Optional.empty();
    double insteadWorth = -1;
    int[] rest = LineupSearch.members(without);
    boolean asked = (limits.must() >>> member & 1) != 0;
    for (int other = 0; other < cover.candidates() && !asked; other++) {
      if ((set >>> other & 1) == 0 && limits.allows(without, other)) {
        long[] exchanged = left.clone();
        cover.add(exchanged, other, rest, rest.length);
        double with = cover.worth(exchanged);
        if (with > insteadWorth) {
          insteadWorth = with;
          instead = Optional.of(table.ids().get(other));
        }
      }
    }
    return new Reason(
        table.ids().get(member),
        asked,
        most,
        worth - cover.worth(left),
        arc(bits, left),
        instead,
        instead.isPresent() ? worth - insteadWorth : 0);
  }

  /** The steps round the greatest fall of the ring that fall at least half as much. */
  private Optional<Reason.Arc> arc(long[] before, long[] after) {
    int[] fall = new int[Ring.STEPS];
    int deepest = 0;
    for (int step = 0; step < Ring.STEPS; step++) {
      fall[step] = cover.ringLevel(before, step) - cover.ringLevel(after, step);
      if (fall[step] > fall[deepest]) {
        deepest = step;
      }
    }
    if (fall[deepest] == 0) {
      return Optional.empty();
    }
    int from = deepest;
    int steps = 1;
    while (steps < Ring.STEPS && 2 * fall[Math.floorMod(from - 1, Ring.STEPS)] >= fall[deepest]) {
      from = Math.floorMod(from - 1, Ring.STEPS);
      steps++;
    }
    while (steps < Ring.STEPS && 2 * fall[(from + steps) % Ring.STEPS] >= fall[deepest]) {
      steps++;
    }
    HueArc arc = new HueArc(from, steps);
    return Optional.of(new Reason.Arc(arc.fromDeg(), arc.toDeg()));
  }
}
