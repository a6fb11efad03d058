package org.panwright.analysis.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Remembered;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * Answers which of some paints give a colour, and keeps the nets of the last few sets of paints.
 * One thread.
 *
 * <p>Of more than {@value #MOST} paints only the {@value #MOST} that alone come nearest to the
 * colour are asked, so that a net never takes more than 6 MB; {@value #KEPT} nets are kept.
 */
public final class RecipeBook {
  /** The most paints a recipe is looked for among. */
  public static final int MOST = 120;

  private static final int KEPT = 3;

  private record Key(OpticsTable table, List<String> paintIds, WashStrengths washes) {}

  private final Remembered<Key, Recipes> nets = new Remembered<>(KEPT);

  /**
   * The recipes nearest to a colour, nearest first, each of other paints.
   *
   * @param target CIELAB under D65
   * @param most how many at most
   * @param cancelled asked now and then
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public List<Match> nearest(
      OpticsTable table,
      List<String> paintIds,
      WashStrengths washes,
      Lab target,
      int most,
      BooleanSupplier cancelled) {
    List<String> asked = shortlist(table, paintIds, washes, target);
    return nets.get(
            new Key(table, asked, washes), () -> Recipes.of(table, asked, washes, cancelled))
        .nearest(target, most);
  }

  /** The paints that alone come nearest to a colour, in their order; all if they are few. */
  static List<String> shortlist(
      OpticsTable table, List<String> paintIds, WashStrengths washes, Lab target) {
    if (paintIds.size() <= MOST) {
      return List.copyOf(paintIds);
    }
    BatchMixer mixer = new BatchMixer(table, Light.D65);
    Nearness nearness = new Nearness(target);
    record Alone(String id, double away) {}
    List<Alone> alone = new ArrayList<>();
    double[] lab = new double[3];
    for (String id : paintIds) {
      mixer.clear();
      mixer.add(table.indexOf(id), 1);
      double least = Double.POSITIVE_INFINITY;
      for (Wash wash : Wash.values()) {
        mixer.writeLab(washes.load(wash), lab, 0);
        least = Math.min(least, nearness.squared(lab[0], lab[1], lab[2]));
      }
      alone.add(new Alone(id, least));
    }
    alone.sort(Comparator.comparingDouble(Alone::away));
    List<String> near = alone.subList(0, MOST).stream().map(Alone::id).toList();
    return paintIds.stream().filter(new java.util.HashSet<>(near)::contains).toList();
  }
}
