package org.panwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Surface;

/**
 * Finds for each paint of a lineup the mix of two or three others that stands in for it.
 *
 * <p>All pairs and triads on the parts of the {@link Net} are mixed once, as masstone and as tint;
 * for each paint the {@value #LOOKED_INTO} most promising sets without it are then tried in all
 * small whole parts. One thread.
 */
final class StandInSearch {
  private static final int LOOKED_INTO = 12;

  private static final List<Parts> PAIR_PARTS =
      Ratio.GRID.stream().map(r -> new Parts(r.first(), r.second(), 0)).toList();
  private static final List<Parts> TRIAD_PARTS =
      Net.TRIADS.stream().map(t -> new Parts(t.first(), t.second(), t.third())).toList();

  private final OpticsTable table;
  private final int[] members;
  private final BatchMixer mixer;
  private final List<PaintSet> sets = new ArrayList<>();
  private final List<float[]> coats = new ArrayList<>();
  private final double[] lab = new double[6];

  private StandInSearch(OpticsTable table, int[] members) {
    this.table = table;
    this.members = members;
    mixer = new BatchMixer(table, Surface.DRY, Light.D65);
  }

  /** The nearest stand-in for each paint, in order; none for a lineup of fewer than three. */
  static List<StandIn> of(Case open, BooleanSupplier cancelled) {
    StandInSearch search = new StandInSearch(open.table(), open.members());
    if (search.members.length < 3) {
      return List.of();
    }
    search.mixAll(cancelled);
    List<StandIn> found = new ArrayList<>();
    for (int member : search.members) {
      requireWanted(cancelled);
      found.add(search.best(member, open));
    }
    return found;
  }

  private static void requireWanted(BooleanSupplier cancelled) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("stand-ins no longer wanted");
    }
  }

  private void mixAll(BooleanSupplier cancelled) {
    boolean three = members.length <= Recipes.MOST_FOR_THREE;
    for (int i = 0; i < members.length; i++) {
      requireWanted(cancelled);
      for (int j = i + 1; j < members.length; j++) {
        mix(new PaintSet(members[i], members[j], PaintSet.NONE), PAIR_PARTS);
        for (int k = j + 1; three && k < members.length; k++) {
          mix(new PaintSet(members[i], members[j], members[k]), TRIAD_PARTS);
        }
      }
    }
  }

  private void mix(PaintSet set, List<Parts> parts) {
    float[] coat = new float[6 * parts.size()];
    for (int i = 0; i < parts.size(); i++) {
      paint(set, parts.get(i));
      for (int c = 0; c < 6; c++) {
        coat[6 * i + c] = (float) lab[c];
      }
    }
    sets.add(set);
    coats.add(coat);
  }

  /** Writes the masstone and the tint of a mix. */
  private void paint(PaintSet set, Parts parts) {
    double tint = set.stir(mixer, table, parts);
    mixer.writeLab(1, lab, 0);
    mixer.writeLab(tint, lab, 3);
  }

  private record Promise(PaintSet set, double squared) {}

  private StandIn best(int member, Case open) {
    String id = table.ids().get(member);
    Lab masstone = open.masstone(id);
    Lab tint = open.tint(id);
    Nearness toMasstone = new Nearness(masstone);
    Nearness toTint = new Nearness(tint);
    StandIn best = null;
    for (Promise promise : promising(member, toMasstone, toTint)) {
      PaintSet set = promise.set();
      Parts parts = bestParts(set, toMasstone, toTint);
      paint(set, parts);
      double thick = Difference.ciede2000(masstone, new Lab(lab[0], lab[1], lab[2]));
      double thin = Difference.ciede2000(tint, new Lab(lab[3], lab[4], lab[5]));
      if (best == null || thick + thin < best.masstone() + best.tint()) {
        best = new StandIn(id, set.recipe(table, parts), thick, thin, open.empty(id));
      }
    }
    return best;
  }

  private Parts bestParts(PaintSet set, Nearness masstone, Nearness tint) {
    Parts best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Parts parts : set.parts()) {
      paint(set, parts);
      double away =
          Math.sqrt(masstone.squared(lab[0], lab[1], lab[2]))
              + Math.sqrt(tint.squared(lab[3], lab[4], lab[5]));
      if (away < least) {
        least = away;
        best = parts;
      }
    }
    return best;
  }

  private PriorityQueue<Promise> promising(int member, Nearness masstone, Nearness tint) {
    PriorityQueue<Promise> best =
        new PriorityQueue<>(Comparator.comparingDouble(Promise::squared).reversed());
    for (int set = 0; set < sets.size(); set++) {
      if (sets.get(set).holds(member)) {
        continue;
      }
      double squared = nearest(coats.get(set), masstone, tint);
      if (best.size() < LOOKED_INTO || squared < best.element().squared()) {
        best.add(new Promise(sets.get(set), squared));
        if (best.size() > LOOKED_INTO) {
          best.remove();
        }
      }
    }
    return best;
  }

  private static double nearest(float[] coat, Nearness masstone, Nearness tint) {
    double least = Double.POSITIVE_INFINITY;
    for (int at = 0; at < coat.length; at += 6) {
      double thick = masstone.squared(coat[at], coat[at + 1], coat[at + 2]);
      double thin = tint.squared(coat[at + 3], coat[at + 4], coat[at + 5]);
      least = Math.min(least, thick + thin + 2 * Math.sqrt(thick * thin));
    }
    return least;
  }
}
