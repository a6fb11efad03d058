package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.finding.Doubt;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.PaintSet;
import org.panwright.analysis.reach.Parts;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.GoldenSection;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;

/**
 * Finds for each paint of a lineup the mix of two or three others that stands in for it.
 *
 * <p>All pairs and triads on the parts of the {@link Net} are mixed once, as masstone and as tint;
 * for each paint the {@value #LOOKED_INTO} most promising sets without it are then tried in all
 * small whole parts. One thread.
 */
public final class StandInSearch {
  private static final int LOOKED_INTO = 8;

  /** The most paints for stand-ins of three; beyond, the search would hold up the picture. */
  static final int MOST_FOR_THREE = 32;

  /** Dilutions of a mix tried as its tint, relative to one strength part. */
  private static final double[] TINTS = {1 / Math.sqrt(2), 1, Math.sqrt(2)};

  /** Doubles kept of a mix: L*, a*, b* of its masstone, then of its tints. */
  private static final int COAT = 3 + 3 * TINTS.length;

  private static final List<Parts> PAIR_PARTS =
      Ratio.GRID.stream().map(r -> new Parts(r.first(), r.second(), 0)).toList();
  private static final List<Parts> TRIAD_PARTS =
      Net.TRIADS.stream().map(t -> new Parts(t.first(), t.second(), t.third())).toList();

  private final OpticsTable table;
  private final int[] members;
  private final BatchMixer mixer;
  private final List<PaintSet> sets = new ArrayList<>();
  private final List<float[]> coats = new ArrayList<>();
  private final double[] lab = new double[COAT];

  private StandInSearch(OpticsTable table, int[] members) {
    this.table = table;
    this.members = members;
    mixer = new BatchMixer(table, Light.D65);
  }

  /** The nearest stand-in for each paint, in order; none for a lineup of fewer than three. */
  public static List<StandIn> of(Case open, BooleanSupplier cancelled) {
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
    boolean three = members.length <= MOST_FOR_THREE;
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
    float[] coat = new float[COAT * parts.size()];
    for (int i = 0; i < parts.size(); i++) {
      paint(set, parts.get(i));
      for (int c = 0; c < COAT; c++) {
        coat[COAT * i + c] = (float) lab[c];
      }
    }
    sets.add(set);
    coats.add(coat);
  }

  /**
   * Writes the masstone and the tints of a mix.
   *
   * @return the load of one strength part of it
   */
  private double paint(PaintSet set, Parts parts) {
    double tintLoad = set.stir(mixer, table, parts);
    mixer.writeLab(1, lab, 0);
    for (int i = 0; i < TINTS.length; i++) {
      mixer.writeLab(tintLoad * TINTS[i], lab, 3 + 3 * i);
    }
    return tintLoad;
  }

  private record Promise(PaintSet set, double away) {}

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
      double tintLoad = paint(set, parts);
      double thick = Difference.ciede2000(masstone, new Lab(lab[0], lab[1], lab[2]));
      double thin = thinned(tintLoad, tint);
      if (best == null || thick + thin < best.masstone() + best.tint()) {
        best = standIn(open, id, set.recipe(table, parts), thick, thin);
      }
    }
    return best;
  }

  private static StandIn standIn(Case open, String id, Recipe recipe, double thick, double thin) {
    Doubt doubt = Doubt.between(new Mixer(open.table()), Recipe.of(id), recipe);
    boolean handy =
        open.paint(id).pigments().size() > 1 || open.groups().of(open.paint(id)) == HueGroup.EARTHS;
    return new StandIn(id, recipe, thick, thin, doubt, handy, open.seats().empty(id));
  }

  private Parts bestParts(PaintSet set, Nearness masstone, Nearness tint) {
    Parts best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Parts parts : set.parts()) {
      paint(set, parts);
      double thin = Double.POSITIVE_INFINITY;
      for (int at = 3; at < COAT; at += 3) {
        thin = Math.min(thin, tint.squared(lab[at], lab[at + 1], lab[at + 2]));
      }
      double away = Math.sqrt(masstone.squared(lab[0], lab[1], lab[2])) + Math.sqrt(thin);
      if (away < least) {
        least = away;
        best = parts;
      }
    }
    return best;
  }

  /** The least ΔE00 of the mix at hand to a tint, thinned as it fits best. */
  private double thinned(double tintLoad, Lab tint) {
    double load =
        GoldenSection.least(
            Math.log(tintLoad / 2), Math.log(tintLoad * 2), 0.01, ln -> away(Math.exp(ln), tint));
    return away(Math.exp(load), tint);
  }

  private double away(double load, Lab tint) {
    mixer.writeLab(load, lab, 3);
    return Difference.ciede2000(tint, new Lab(lab[3], lab[4], lab[5]));
  }

  private PriorityQueue<Promise> promising(int member, Nearness masstone, Nearness tint) {
    PriorityQueue<Promise> best =
        new PriorityQueue<>(Comparator.comparingDouble(Promise::away).reversed());
    double bound = Double.POSITIVE_INFINITY;
    for (int set = 0; set < sets.size(); set++) {
      if (sets.get(set).holds(member)) {
        continue;
      }
      double away = nearest(coats.get(set), masstone, tint, bound);
      if (away < bound) {
        best.add(new Promise(sets.get(set), away));
        if (best.size() > LOOKED_INTO) {
          best.remove();
        }
        if (best.size() == LOOKED_INTO) {
          bound = best.element().away();
        }
      }
    }
    return best;
  }

  /** The least distance of a set's mixes, if it is below {@code bound}; else {@code bound}. */
  private static double nearest(float[] coat, Nearness masstone, Nearness tint, double bound) {
    double least = bound;
    for (int from = 0; from < coat.length; from += COAT) {
      double thick = Math.sqrt(masstone.squared(coat[from], coat[from + 1], coat[from + 2]));
      if (thick < least) {
        double thin = Double.POSITIVE_INFINITY;
        for (int at = from + 3; at < from + COAT; at += 3) {
          thin = Math.min(thin, tint.squared(coat[at], coat[at + 1], coat[at + 2]));
        }
        least = Math.min(least, thick + Math.sqrt(thin));
      }
    }
    return least;
  }
}
