package org.panwright.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/**
 * A paint of a lineup with the wells it sits in.
 *
 * @param labels of its wells in their order, joined by commas
 */
record LineupPaint(String labels, Paint paint) {
  /**
   * The paints of a lineup in the order of the wells, each once.
   *
   * @throws IllegalArgumentException if the kit has no such lineup
   */
  static List<LineupPaint> of(Kit kit, String lineupId) {
    Lineup lineup = lineup(kit, lineupId);
    Map<String, List<String>> labels = new LinkedHashMap<>();
    for (Well well : kit.boxOf(lineup).wells()) {
      lineup
          .in(well.id())
          .ifPresent(
              filling ->
                  labels
                      .computeIfAbsent(filling.paintId(), unused -> new ArrayList<>())
                      .add(well.label()));
    }
    List<LineupPaint> paints = new ArrayList<>();
    labels.forEach(
        (id, wells) ->
            paints.add(
                new LineupPaint(String.join(", ", wells), kit.shelf().find(id).orElseThrow())));
    return paints;
  }

  static Lineup lineup(Kit kit, String lineupId) {
    return kit.lineup(lineupId)
        .orElseThrow(() -> new IllegalArgumentException("the kit has no lineup " + lineupId));
  }
}
