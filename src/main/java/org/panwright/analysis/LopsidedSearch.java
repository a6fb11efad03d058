package org.panwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds where a lineup leans too far to one side. */
final class LopsidedSearch {
  private LopsidedSearch() {}

  static List<Finding> of(Balance balance) {
    int paints = balance.paints();
    if (paints < Lopsided.FEWEST) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>();
    for (Map.Entry<HueGroup, Integer> entry : balance.groups().entrySet()) {
      int count = entry.getValue();
      HueGroup group = entry.getKey();
      if (count >= 4 && 3 * count > paints) {
        found.add(new Lopsided(Lopsided.Side.CROWDED, Optional.of(group), count, paints));
      }
      boolean primary =
          group == HueGroup.YELLOWS || group == HueGroup.REDS || group == HueGroup.BLUES;
      if (primary && count == 0) {
        found.add(new Lopsided(Lopsided.Side.MISSING, Optional.of(group), 0, paints));
      }
    }
    addIf(2 * balance.opaque() > paints, Lopsided.Side.OPAQUE, balance.opaque(), paints, found);
    addIf(
        4 * balance.staining() > 3 * paints,
        Lopsided.Side.STAINING,
        balance.staining(),
        paints,
        found);
    addIf(
        4 * balance.granulating() > 3 * paints,
        Lopsided.Side.GRANULATING,
        balance.granulating(),
        paints,
        found);
    return found;
  }

  private static void addIf(
      boolean holds, Lopsided.Side side, int count, int paints, List<Finding> found) {
    if (holds) {
      found.add(new Lopsided(side, Optional.empty(), count, paints));
    }
  }
}
