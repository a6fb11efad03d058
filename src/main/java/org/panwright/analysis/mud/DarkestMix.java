package org.panwright.analysis.mud;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.reach.Net;
import org.panwright.kit.Kit;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.WetLook;
import org.panwright.paint.Wash;

/** Finds the darkest dry mix of a walk; the first of equals, so simpler mixes win; one thread. */
public final class DarkestMix implements Net.Sink {
  private static final int NONE = -1;

  private double lowest = Double.POSITIVE_INFINITY;
  private int first = NONE;
  private int second = NONE;
  private int third = NONE;
  private int place;

  /** The same so far, to be led on with other mixes. */
  DarkestMix copy() {
    DarkestMix copy = new DarkestMix();
    copy.lowest = lowest;
    copy.first = first;
    copy.second = second;
    copy.third = third;
    copy.place = place;
    return copy;
  }

  @Override
  public void single(int paint, double[] colours) {
    seek(paint, NONE, NONE, colours, 0, 1);
  }

  @Override
  public void pair(int one, int two, double[] colours) {
    seek(one, two, NONE, colours, 1, Net.PATH - 1);
  }

  @Override
  public void triad(int one, int two, int three, double[] colours) {
    seek(one, two, three, colours, 0, Net.TRIADS.size());
  }

  private void seek(int one, int two, int three, double[] colours, int fromMix, int toMix) {
    for (int at = fromMix * Net.MIX; at < toMix * Net.MIX; at += Net.COLOUR) {
      if (colours[at] < lowest) {
        lowest = colours[at];
        first = one;
        second = two;
        third = three;
        place = at / Net.COLOUR;
      }
    }
  }

  /** L* of the darkest mix so far; infinite if there was none. */
  public double lowest() {
    return lowest;
  }

  /** The darkest mix; empty if nothing was mixed. */
  public Optional<Dark> find(OpticsTable table, Kit kit) {
    if (first == NONE) {
      return Optional.empty();
    }
    Recipe recipe = new Recipe(portions(table.ids()));
    Wash wash = Wash.values()[place % Net.WASHES];
    WetLook look = WetLook.of(new Mixer(table), kit.shelf());
    double wetL = look.lab(recipe, kit.washes().load(wash)).l();
    return Optional.of(new Dark(recipe, wash, lowest, wetL));
  }

  private List<Portion> portions(List<String> ids) {
    int mix = place / Net.WASHES;
    if (second == NONE) {
      return List.of(new Portion(ids.get(first), 1));
    }
    if (third == NONE) {
      Ratio ratio = Ratio.GRID.get(mix - 1);
      return List.of(
          new Portion(ids.get(first), ratio.first()), new Portion(ids.get(second), ratio.second()));
    }
    Net.Triad parts = Net.TRIADS.get(mix);
    return List.of(
        new Portion(ids.get(first), parts.first()),
        new Portion(ids.get(second), parts.second()),
        new Portion(ids.get(third), parts.third()));
  }
}
