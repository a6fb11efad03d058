package org.panwright.analysis.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.PaintSet;
import org.panwright.analysis.reach.Parts;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.GoldenSection;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * Answers which of some paints give a colour.
 *
 * <p>The {@link Net} of the paints is mixed once and kept (16 bytes a coat: 0.1 MB for 12 paints, 6
 * MB for 48; beyond {@value #MOST_FOR_THREE} paints recipes have two paints only, so that it stays
 * below that). Each question looks through it for the {@value #LOOKED_INTO} most promising sets of
 * paints, tries all small whole parts of those in all washes, and settles the load of the best in
 * between. One thread.
 */
public final class Recipes {
  /** The most paints for recipes of three. */
  public static final int MOST_FOR_THREE = 48;

  private static final int LOOKED_INTO = 40;

  /** A further paint in a recipe must bring at least this much ΔE00. */
  private static final double FURTHER_PAINT = 0.1;

  /** A recipe that only adds to a better one must be nearer by this. */
  private static final double ADDITION = 0.5;

  private final OpticsTable table;
  private final WashStrengths washes;
  private final BatchMixer mixer;
  private final Coats coats;
  private final double[] lab = new double[3];

  private Recipes(OpticsTable table, WashStrengths washes, Coats coats) {
    this.table = table;
    this.washes = washes;
    this.coats = coats;
    mixer = new BatchMixer(table, Light.D65);
  }

  /**
   * Recipes from these paints of a table.
   *
   * @param cancelled asked once for each paint
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public static Recipes of(
      OpticsTable table, List<String> paintIds, WashStrengths washes, BooleanSupplier cancelled) {
    int[] paints = table.indicesOf(paintIds);
    Coats coats = new Coats();
    NetWalk walk = new NetWalk(table, washes, cancelled);
    if (paints.length <= MOST_FOR_THREE) {
      walk.all(paints, coats);
    } else {
      walk.pairs(paints, coats);
    }
    return new Recipes(table, washes, coats);
  }

  /**
   * The recipes nearest to a colour, nearest first, each of other paints.
   *
   * @param target CIELAB under D65
   * @param most how many at most; fewer if there are no more paints
   */
  public List<Match> nearest(Lab target, int most) {
    List<Found> found = new ArrayList<>();
    for (PaintSet set : promising(target)) {
      found.add(best(set, target));
    }
    found.sort(Comparator.comparingDouble(Found::cost));
    List<Found> kept = new ArrayList<>();
    for (Found next : found) {
      if (kept.size() < most && kept.stream().noneMatch(better -> next.onlyAddsTo(better))) {
        kept.add(next);
      }
    }
    return kept.stream().map(Found::match).toList();
  }

  private record Found(PaintSet set, Match match) {
    double cost() {
      return match.deltaE() + FURTHER_PAINT * (set.size() - 1);
    }

    boolean onlyAddsTo(Found better) {
      return set.holdsAll(better.set) && match.deltaE() > better.match.deltaE() - ADDITION;
    }
  }

  private record Promise(PaintSet set, double squared) {}

  /** The sets of paints whose coats on the net come nearest. */
  private List<PaintSet> promising(Lab target) {
    Nearness nearness = new Nearness(target);
    PriorityQueue<Promise> best =
        new PriorityQueue<>(Comparator.comparingDouble(Promise::squared).reversed());
    for (int set = 0; set < coats.sets(); set++) {
      double squared = coats.nearest(set, nearness);
      if (best.size() < LOOKED_INTO || squared < best.element().squared()) {
        best.add(new Promise(coats.set(set), squared));
        if (best.size() > LOOKED_INTO) {
          best.remove();
        }
      }
    }
    return best.stream()
        .sorted(Comparator.comparingDouble(Promise::squared))
        .map(Promise::set)
        .toList();
  }

  /** The best recipe of a set of paints. */
  private Found best(PaintSet set, Lab target) {
    Parts parts = null;
    Wash wash = Wash.MILK;
    double least = Double.POSITIVE_INFINITY;
    for (Parts tried : set.parts()) {
      set.stir(mixer, table, tried);
      for (Wash w : Wash.values()) {
        double away = away(washes.load(w), target);
        if (away < least) {
          least = away;
          parts = tried;
          wash = w;
        }
      }
    }
    set.stir(mixer, table, parts);
    double load = settle(wash, target);
    double deltaE = away(load, target);
    Match match =
        new Match(
            set.recipe(table, parts),
            nearestWash(load),
            load,
            new Lab(lab[0], lab[1], lab[2]),
            deltaE);
    return new Found(set, match);
  }

  /** The load nearest to the target between the neighbours of a wash, by golden section in ln. */
  private double settle(Wash wash, Lab target) {
    Wash[] all = Wash.values();
    double low = Math.log(washes.load(all[Math.min(all.length - 1, wash.ordinal() + 1)]));
    double high = Math.log(washes.load(all[Math.max(0, wash.ordinal() - 1)]));
    double settled =
        Math.exp(GoldenSection.least(low, high, 0.01, ln -> away(Math.exp(ln), target)));
    double named = washes.load(wash);
    return away(settled, target) < away(named, target) ? settled : named;
  }

  private double away(double load, Lab target) {
    mixer.writeLab(load, lab, 0);
    return Difference.ciede2000(target, new Lab(lab[0], lab[1], lab[2]));
  }

  private Wash nearestWash(double load) {
    Wash nearest = Wash.BUTTER;
    for (Wash wash : Wash.values()) {
      if (steps(load, wash) < steps(load, nearest)) {
        nearest = wash;
      }
    }
    return nearest;
  }

  private double steps(double load, Wash wash) {
    return Math.abs(Math.log(load / washes.load(wash)));
  }
}
