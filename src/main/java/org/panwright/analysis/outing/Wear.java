package org.panwright.analysis.outing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.StockEdit;

/** How the paint used on an outing wears the filled wells of a box down. */
public final class Wear {
  private Wear() {}

  /**
   * The edit that takes what was used out of the filled wells of a lineup's box.
   *
   * <p>A paint in several wells is taken from each in proportion to what is left there. What no
   * well holds is not taken.
   *
   * @param outing the outing, its paint not yet taken
   * @param usedMl dry paint used, by paint id
   */
  public static StockEdit.WearDown edit(
      Kit kit, Lineup lineup, Outing outing, Map<String, Double> usedMl) {
    return new StockEdit.WearDown(outing.id(), lineup.boxId(), byWell(kit, lineup, usedMl));
  }

  /**
   * Dry paint taken from each filled well of a lineup's box, by well id: {@code used · left / Σ
   * left} over the wells of the same paint, at most what is left.
   */
  public static Map<String, Double> byWell(Kit kit, Lineup lineup, Map<String, Double> usedMl) {
    List<FilledWell> filled = new ArrayList<>();
    Map<String, Double> left = new HashMap<>();
    for (FilledWell well : kit.stock().filled()) {
      if (well.boxId().equals(lineup.boxId()) && usedMl.containsKey(well.paintId())) {
        filled.add(well);
        left.merge(well.paintId(), well.leftMl(), Double::sum);
      }
    }
    Map<String, Double> worn = new HashMap<>();
    for (FilledWell well : filled) {
      double all = left.get(well.paintId());
      double used = Math.min(usedMl.get(well.paintId()), all);
      if (used > 0) {
        worn.put(well.wellId(), used * well.leftMl() / all);
      }
    }
    return worn;
  }
}
