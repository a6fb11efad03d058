package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.mud.Mud;
import org.panwright.analysis.mud.PairMud;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.WashStrengths;

/**
 * All pairs of a lineup's paints and of those that could take their place, mixed once, so that the
 * grid after any exchange is only picked out; one thread.
 */
final class Bench {
  private final OpticsTable table;
  private final WashStrengths washes;
  private final MixGrid grid;
  private final Map<String, Integer> rows = new HashMap<>();

  /**
   * @param inside the lineup's paints
   * @param outside those that could come in
   */
  Bench(OpticsTable table, WashStrengths washes, List<String> inside, List<String> outside) {
    this.table = table;
    this.washes = washes;
    Set<String> all = new LinkedHashSet<>(inside);
    all.addAll(outside);
    List<String> ids = new ArrayList<>(all);
    for (int row = 0; row < ids.size(); row++) {
      rows.put(ids.get(row), row);
    }
    grid = MixGrid.of(table, table.indicesOf(ids), washes, () -> false);
  }

  /** The pairs of all. */
  MixGrid grid() {
    return grid;
  }

  /** The row of a paint. */
  int row(String paintId) {
    return rows.get(paintId);
  }

  /** What mixing two of the paints does to chroma; empty if one of them is a neutral. */
  Optional<PairMud> mud(String first, String second) {
    return Mud.between(table, grid, row(first), row(second));
  }

  /** The grid of a lineup; mixed anew if it holds a paint that is not on the bench. */
  MixGrid gridOf(List<String> paintIds) {
    if (!rows.keySet().containsAll(paintIds)) {
      return MixGrid.of(table, table.indicesOf(paintIds), washes, () -> false);
    }
    return grid.select(paintIds.stream().mapToInt(rows::get).toArray());
  }
}
