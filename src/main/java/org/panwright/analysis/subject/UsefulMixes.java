package org.panwright.analysis.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.panwright.colour.Difference;
import org.panwright.colour.HueWord;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * Chooses the mixes of a lineup that a painter would want on a card.
 *
 * <ol>
 *   <li>for each subject colour the nearest recipe, if it comes near (ΔE00 below {@value
 *       #NEAR_ENOUGH});
 *   <li>the darkest pair, as cream, and the greyest pair of two coloured paints, as milk;
 *   <li>for each hue word no paint alone does well, the pair that is clearest there, as milk;
 *   <li>then the pair farthest from all paints and all mixes chosen so far, as long as it is
 *       {@value #APART} away.
 * </ol>
 */
public final class UsefulMixes {
  private static final double NEAR_ENOUGH = 8;
  private static final double APART = 6;
  private static final double COLOURED_FROM = 12;
  private static final double NEUTRAL_BELOW = 8;
  private static final int MOST_SUBJECTS = 6;

  /** How much clearer than the best paint alone a pair must be in its hue. */
  private static final double CLEARER = 1.2;

  /** Places in {@link Ratio#GRID} that are easy to measure out: 3:1, 1:1, 1:3. */
  private static final int[] RATIOS = {1, Ratio.EVEN, 5};

  private final OpticsTable table;
  private final MixGrid grid;
  private final int most;
  private final List<UsefulMix> chosen = new ArrayList<>();

  private UsefulMixes(OpticsTable table, MixGrid grid, int most) {
    this.table = table;
    this.grid = grid;
    this.most = most;
  }

  /**
   * The useful mixes of some paints of a table: those for subjects first, then by hue, neutral ones
   * last.
   *
   * @param most how many at most
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public static List<UsefulMix> of(
      OpticsTable table,
      List<String> paintIds,
      WashStrengths washes,
      List<SubjectColour> subjects,
      int most,
      BooleanSupplier cancelled) {
    int[] paints = table.indicesOf(paintIds);
    if (paints.length < 2) {
      return List.of();
    }
    UsefulMixes search = new UsefulMixes(table, MixGrid.of(table, paints, washes, cancelled), most);
    if (!subjects.isEmpty()) {
      search.meet(subjects, Recipes.of(table, paintIds, washes, cancelled));
    }
    int forSubjects = search.chosen.size();
    search.darkAndGrey();
    search.clearHues();
    search.spreadOut();
    List<UsefulMix> rest =
        new ArrayList<>(search.chosen.subList(forSubjects, search.chosen.size()));
    rest.sort(Comparator.comparing(UsefulMixes::isNeutral).thenComparing(m -> hue(m.lab())));
    List<UsefulMix> ordered = new ArrayList<>(search.chosen.subList(0, forSubjects));
    ordered.addAll(rest);
    return ordered;
  }

  private void meet(List<SubjectColour> subjects, Recipes recipes) {
    for (SubjectColour subject : subjects) {
      if (chosen.size() < Math.min(MOST_SUBJECTS, most)) {
        recipes.nearest(subject.lab(), 1).stream()
            .filter(match -> match.deltaE() < NEAR_ENOUGH)
            .map(
                match ->
                    new UsefulMix(
                        match.recipe(), match.wash(), match.lab(), Optional.of(subject.name())))
            .forEach(chosen::add);
      }
    }
  }

  private void darkAndGrey() {
    pairs(Wash.CREAM).stream()
        .min(Comparator.comparingDouble(m -> m.lab().l()))
        .ifPresent(this::add);
    List<UsefulMix> greys = new ArrayList<>();
    for (int row = 0; row < grid.size(); row++) {
      for (int column = row + 1; column < grid.size(); column++) {
        if (isColoured(row) && isColoured(column)) {
          pair(row, column, Wash.MILK, greys);
        }
      }
    }
    greys.stream()
        .min(Comparator.comparingDouble(m -> m.lab().chroma()))
        .filter(UsefulMixes::isNeutral)
        .ifPresent(this::add);
  }

  private void clearHues() {
    Map<HueWord, Double> alone = new EnumMap<>(HueWord.class);
    for (int row = 0; row < grid.size(); row++) {
      Oklch paint = oklch(single(row));
      alone.merge(HueWord.of(paint.hueDeg()), paint.c(), Math::max);
    }
    Map<HueWord, UsefulMix> best = new EnumMap<>(HueWord.class);
    for (UsefulMix mix : pairs(Wash.MILK)) {
      best.merge(
          HueWord.of(hue(mix.lab())),
          mix,
          (one, other) -> oklch(one.lab()).c() >= oklch(other.lab()).c() ? one : other);
    }
    best.entrySet().stream()
        .filter(
            e ->
                !isNeutral(e.getValue())
                    && oklch(e.getValue().lab()).c()
                        > CLEARER * alone.getOrDefault(e.getKey(), 0.0))
        .map(Map.Entry::getValue)
        .sorted(Comparator.comparingDouble((UsefulMix m) -> oklch(m.lab()).c()).reversed())
        .forEach(this::add);
  }

  private void spreadOut() {
    List<UsefulMix> pairs = pairs(Wash.MILK);
    double[] away = new double[pairs.size()];
    java.util.Arrays.fill(away, Double.POSITIVE_INFINITY);
    for (int row = 0; row < grid.size(); row++) {
      approach(away, pairs, single(row));
    }
    for (UsefulMix mix : chosen) {
      approach(away, pairs, mix.lab());
    }
    while (chosen.size() < most) {
      int farthest = 0;
      for (int i = 1; i < away.length; i++) {
        farthest = away[i] > away[farthest] ? i : farthest;
      }
      if (away[farthest] < APART) {
        return;
      }
      add(pairs.get(farthest));
      approach(away, pairs, pairs.get(farthest).lab());
      away[farthest] = 0;
    }
  }

  private static void approach(double[] away, List<UsefulMix> pairs, Lab lab) {
    for (int i = 0; i < away.length; i++) {
      away[i] = Math.min(away[i], Difference.ciede2000(pairs.get(i).lab(), lab));
    }
  }

  /** Takes a mix unless there is no room, or one of the same paints in the same wash is taken. */
  private void add(UsefulMix mix) {
    boolean known =
        chosen.stream().anyMatch(m -> m.wash() == mix.wash() && paints(m).equals(paints(mix)));
    if (!known && chosen.size() < most) {
      chosen.add(mix);
    }
  }

  private static Set<String> paints(UsefulMix mix) {
    return mix.recipe().portions().stream().map(Portion::paintId).collect(Collectors.toSet());
  }

  private List<UsefulMix> pairs(Wash wash) {
    List<UsefulMix> pairs = new ArrayList<>();
    for (int row = 0; row < grid.size(); row++) {
      for (int column = row + 1; column < grid.size(); column++) {
        pair(row, column, wash, pairs);
      }
    }
    return pairs;
  }

  private void pair(int row, int column, Wash wash, List<UsefulMix> to) {
    for (int ratio : RATIOS) {
      Ratio parts = Ratio.GRID.get(ratio);
      Recipe recipe = Recipe.of(id(row), parts.first(), id(column), parts.second());
      to.add(new UsefulMix(recipe, wash, grid.lab(row, column, ratio, wash), Optional.empty()));
    }
  }

  private String id(int row) {
    return table.ids().get(grid.paint(row));
  }

  private Lab single(int row) {
    return grid.lab(row, row, Ratio.EVEN, Wash.MILK);
  }

  private boolean isColoured(int row) {
    return single(row).chroma() >= COLOURED_FROM;
  }

  private static boolean isNeutral(UsefulMix mix) {
    return mix.lab().chroma() < NEUTRAL_BELOW;
  }

  private static double hue(Lab lab) {
    return oklch(lab).hueDeg();
  }

  private static Oklch oklch(Lab lab) {
    return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch();
  }
}
