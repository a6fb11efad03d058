package org.panwright.analysis.choose;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.kit.Kit;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Transparency;

/** One choice being made; one thread. */
final class ChoiceRun {
  /** Up to so many lineups the best is sought until it is proven. */
  private static final double PROVABLE = 3e6;

  private static final long EFFORT_TO_PROVE = 60_000_000;
  private static final long EFFORT_TO_BOUND = 1_000_000;
  private static final long EFFORT_TO_PROVE_FURTHER = 6_000_000;
  private static final long EFFORT_OF_FEW = 300_000;
  private static final long EFFORT_OF_MANY = 12_000_000;
  private static final long EFFORT_OF_FURTHER = 3_000_000;

  private final Conditions conditions;
  private final List<Paint> paints;
  private final BooleanSupplier cancelled;
  private final Consumer<Chooser.Progress> progress;
  private final Cover cover;
  private final ProposalMaker maker;
  private Limits limits;
  private List<String> best = List.of();
  private double bestWorth;
  private double share;

  ChoiceRun(
      Kit kit,
      PigmentLibrary library,
      Conditions conditions,
      List<Paint> paints,
      Map<String, HueGroup> groups,
      BooleanSupplier cancelled,
      Consumer<Chooser.Progress> progress) {
    this.conditions = conditions;
    this.paints = paints;
    this.cancelled = cancelled;
    this.progress = progress;
    OpticsTable table = OpticsTable.of(paints, library, kit.paper());
    NetWalk walk = new NetWalk(table, kit.washes(), cancelled);
    int[] all = IntStream.range(0, paints.size()).toArray();
    boolean[] transparent = new boolean[paints.size()];
    for (int i = 0; i < transparent.length; i++) {
      transparent[i] =
          paints.get(i).handling().transparency().compareTo(Transparency.SEMI_OPAQUE) < 0;
    }
    CoverBuilder builder =
        new CoverBuilder(
            all,
            paints.size(),
            conditions.subjects().stream().map(SubjectColour::lab).toList(),
            transparent);
    walk.all(all, builder);
    cover = builder.cover(conditions.weights(), conditions.places());
    limits = limits(groups);
    maker = new ProposalMaker(table, walk, kit, cover, conditions);
  }

  private Limits limits(Map<String, HueGroup> groups) {
    long must = 0;
    Map<HueGroup, Long> members = new EnumMap<>(HueGroup.class);
    for (int i = 0; i < paints.size(); i++) {
      String id = paints.get(i).id();
      must |= conditions.must().contains(id) ? 1L << i : 0;
      if (!groups.isEmpty()) {
        members.merge(groups.get(id), 1L << i, (one, other) -> one | other);
      }
    }
    List<Limits.Cap> caps =
        members.values().stream()
            .map(set -> new Limits.Cap(set, conditions.mostOfAGroup().orElseThrow()))
            .toList();
    return new Limits(conditions.places(), must, caps);
  }

  /** A lineup found, and what none that keeps to its limits is worth more than. */
  private record Found(long set, double bound, boolean proven) {}

  Choice choice(int allowed) {
    int free = conditions.places() - conditions.must().size();
    double lineups = LineupSearch.choose(paints.size() - conditions.must().size(), free);
    boolean few = lineups <= PROVABLE;
    boolean whole = allowed == paints.size();
    int apart = apart(free);
    List<Found> found = new ArrayList<>();
    found.add(first(few));
    told(found.get(0).set());
    Limits further = limits;
    while (found.size() < Chooser.PROPOSALS) {
      Found last = found.get(found.size() - 1);
      further = further.with(new Limits.Cap(last.set(), conditions.places() - apart));
      Optional<Found> next = further(further, few, last.bound(), 0.7 + 0.1 * found.size());
      if (next.isEmpty()) {
        break;
      }
      found.add(next.get());
    }
    List<Proposal> proposals = new ArrayList<>();
    for (Found each : found) {
      double bound = whole ? each.bound() : 1;
      proposals.add(maker.of(each.set(), limits, bound, whole && each.proven()));
    }
    return new Choice(proposals, apart, allowed, paints.size(), lineups, List.of());
  }

  private Found first(boolean few) {
    long start =
        new SwapSearch(
                cover, limits, effort(few ? EFFORT_OF_FEW : EFFORT_OF_MANY, 0, 0.5), this::told)
            .best()
            .orElseThrow();
    return bounded(
        limits, start, effort(few ? EFFORT_TO_PROVE : EFFORT_TO_BOUND, 0.5, 0.8), Double.MAX_VALUE);
  }

  /** The best that differs from all before, proven where lineups are few and it soon shows. */
  private Optional<Found> further(Limits further, boolean few, double bound, double from) {
    OptionalLong start =
        new SwapSearch(
                cover,
                further,
                effort(few ? EFFORT_OF_FEW : EFFORT_OF_FURTHER, from, from + 0.05),
                set -> {})
            .best();
    if (start.isEmpty()) {
      return Optional.empty();
    }
    long set = start.getAsLong();
    return Optional.of(
        few
            ? bounded(further, set, effort(EFFORT_TO_PROVE_FURTHER, from + 0.05, from + 0.1), bound)
            : new Found(set, bound, false));
  }

  private Found bounded(Limits within, long start, Effort effort, double known) {
    LineupSearch exact = new LineupSearch(cover, within, start, effort);
    exact.run();
    return new Found(exact.best(), Math.min(known, exact.bound()), exact.isProven());
  }

  /** A quarter of the paints, or less where little can be exchanged. */
  private int apart(int free) {
    int exchangeable = Math.min(free, paints.size() - conditions.places());
    return Math.max(1, Math.min((conditions.places() + 3) / 4, (exchangeable + 1) / 2));
  }

  private Effort effort(long all, double from, double to) {
    return new Effort(
        all,
        cancelled,
        done -> {
          share = from + (to - from) * done;
          tell();
        });
  }

  private void told(long set) {
    best = maker.ids(set);
    bestWorth = maker.worth(set);
    tell();
  }

  private void tell() {
    progress.accept(new Chooser.Progress(share, best, bestWorth));
  }
}
