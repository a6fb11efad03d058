package org.panwright.analysis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
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

  Choice choice(int allowed) {
    int free = conditions.places() - conditions.must().size();
    double lineups = LineupSearch.choose(paints.size() - conditions.must().size(), free);
    boolean few = lineups <= PROVABLE;
    int apart = apart(free);
    long first =
        new SwapSearch(
                cover, limits, effort(few ? EFFORT_OF_FEW : EFFORT_OF_MANY, 0, 0.5), this::told)
            .best()
            .orElseThrow();
    LineupSearch exact =
        new LineupSearch(
            cover, limits, first, effort(few ? EFFORT_TO_PROVE : EFFORT_TO_BOUND, 0.5, 0.8));
    exact.run();
    told(exact.best());
    boolean whole = allowed == paints.size();
    double bound = whole ? exact.bound() : 1;
    List<Long> sets = new ArrayList<>();
    sets.add(exact.best());
    Limits further = limits;
    for (int more = 1; more < Chooser.PROPOSALS; more++) {
      further =
          further.with(new Limits.Cap(sets.get(sets.size() - 1), conditions.places() - apart));
      double from = 0.7 + 0.1 * more;
      OptionalLong next =
          new SwapSearch(
                  cover,
                  further,
                  effort(few ? EFFORT_OF_FEW : EFFORT_OF_FURTHER, from, from + 0.1),
                  set -> {})
              .best();
      if (next.isEmpty()) {
        break;
      }
      sets.add(next.getAsLong());
    }
    List<Proposal> proposals = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      boolean proven = i == 0 && whole && exact.isProven();
      proposals.add(maker.of(sets.get(i), limits, bound, proven));
    }
    return new Choice(proposals, apart, allowed, paints.size(), lineups, List.of());
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
