package org.panwright.analysis.choose;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * Picks from a very large shelf the paints most unlike each other: first those that must be in,
 * then always the one farthest, thick and thin together, from all picked. Where a hue group is
 * limited, the first picks keep to the limit until they make a whole lineup, so that one can be
 * made of what is picked.
 *
 * <pre>d² = ΔE*ab(masstones)² + ΔE*ab(tints)²</pre>
 */
final class FarApart {
  private final Kit kit;
  private final PigmentLibrary library;

  FarApart(Kit kit, PigmentLibrary library) {
    this.kit = kit;
    this.library = library;
  }

  /**
   * At most {@code most} of the paints, all that must be in among them, in their order.
   *
   * @param groups the hue group of each paint where groups are limited; else empty
   */
  List<Paint> of(
      List<Paint> paints, Conditions conditions, Map<String, HueGroup> groups, int most) {
    if (paints.size() <= most) {
      return paints;
    }
    Set<String> must = conditions.must();
    int limit = conditions.mostOfAGroup().orElse(Integer.MAX_VALUE);
    Map<HueGroup, Integer> held = new EnumMap<>(HueGroup.class);
    double[][] looks = looks(paints);
    double[] nearest = new double[paints.size()];
    java.util.Arrays.fill(nearest, Double.MAX_VALUE);
    boolean[] picked = new boolean[paints.size()];
    int count = 0;
    for (int i = 0; i < picked.length; i++) {
      if (must.contains(paints.get(i).id())) {
        pick(i, looks, nearest, picked);
        hold(held, groups, paints.get(i));
        count++;
      }
    }
    for (; count < most; count++) {
      int farthest = -1;
      for (int i = 0; i < picked.length; i++) {
        boolean fits = count >= conditions.places() || held(held, groups, paints.get(i)) < limit;
        if (!picked[i] && fits && (farthest < 0 || nearest[i] > nearest[farthest])) {
          farthest = i;
        }
      }
      pick(farthest, looks, nearest, picked);
      hold(held, groups, paints.get(farthest));
    }
    List<Paint> kept = new ArrayList<>();
    for (int i = 0; i < picked.length; i++) {
      if (picked[i]) {
        kept.add(paints.get(i));
      }
    }
    return kept;
  }

  private static int held(Map<HueGroup, Integer> held, Map<String, HueGroup> groups, Paint paint) {
    return groups.isEmpty() ? 0 : held.getOrDefault(groups.get(paint.id()), 0);
  }

  private static void hold(Map<HueGroup, Integer> held, Map<String, HueGroup> groups, Paint paint) {
    if (!groups.isEmpty()) {
      held.merge(groups.get(paint.id()), 1, Integer::sum);
    }
  }

  private static void pick(int paint, double[][] looks, double[] nearest, boolean[] picked) {
    picked[paint] = true;
    for (int i = 0; i < nearest.length; i++) {
      double squared = 0;
      for (int axis = 0; axis < looks[i].length; axis++) {
        squared += (looks[i][axis] - looks[paint][axis]) * (looks[i][axis] - looks[paint][axis]);
      }
      nearest[i] = Math.min(nearest[i], squared);
    }
  }

  private double[][] looks(List<Paint> paints) {
    OpticsTable table = OpticsTable.of(paints, library, kit.paper());
    Mixer mixer = new Mixer(table);
    double[][] looks = new double[paints.size()][];
    for (int i = 0; i < looks.length; i++) {
      Lab thick = mixer.lab(Recipe.of(paints.get(i).id()), 1);
      Lab thin = mixer.lab(Recipe.of(paints.get(i).id()), table.tintLoad(i));
      looks[i] = new double[] {thick.l(), thick.a(), thick.b(), thin.l(), thin.a(), thin.b()};
    }
    return looks;
  }
}
