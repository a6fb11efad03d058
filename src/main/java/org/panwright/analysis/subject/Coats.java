package org.panwright.analysis.subject;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.PaintSet;

/** Keeps all coats of a walk, set of paints by set of paints. */
final class Coats implements Net.Sink {
  private final List<PaintSet> sets = new ArrayList<>();
  private int[] starts = new int[64];
  private float[] labs = new float[1024];
  private int end;

  /** How many sets of paints. */
  int sets() {
    return sets.size();
  }

  PaintSet set(int number) {
    return sets.get(number);
  }

  /** The square of the distance from a colour to the nearest coat of a set. */
  double nearest(int number, Nearness to) {
    int stop = number + 1 < sets.size() ? starts[number + 1] : end;
    double least = Double.POSITIVE_INFINITY;
    for (int at = starts[number]; at < stop; at += 3) {
      least = Math.min(least, to.squared(labs[at], labs[at + 1], labs[at + 2]));
    }
    return least;
  }

  @Override
  public void single(int paint, double[] colours) {
    keep(new PaintSet(paint, PaintSet.NONE, PaintSet.NONE), colours, 0, 1);
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    keep(new PaintSet(first, second, PaintSet.NONE), colours, 1, Net.PATH - 1);
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    keep(new PaintSet(first, second, third), colours, 0, Net.TRIADS.size());
  }

  private void keep(PaintSet set, double[] colours, int fromMix, int toMix) {
    int number = sets.size();
    sets.add(set);
    if (number == starts.length) {
      starts = Arrays.copyOf(starts, 2 * number);
    }
    starts[number] = end;
    int needed = end + (toMix - fromMix) * Net.WASHES * 3;
    if (needed > labs.length) {
      labs = Arrays.copyOf(labs, Math.max(needed, 2 * labs.length));
    }
    for (int at = fromMix * Net.MIX; at < toMix * Net.MIX; at += Net.COLOUR) {
      labs[end] = (float) colours[at];
      labs[end + 1] = (float) colours[at + 1];
      labs[end + 2] = (float) colours[at + 2];
      end += 3;
    }
  }
}
