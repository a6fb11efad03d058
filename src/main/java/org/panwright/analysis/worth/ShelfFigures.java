package org.panwright.analysis.worth;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Representatives;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.reach.Sinks;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.WashStrengths;

/**
 * What the whole shelf can mix: the measure of a lineup.
 *
 * @param ring the shelf's hue ring
 * @param reach the shelf's reach
 * @param standing the ids of the paints whose mixes were counted; all, unless the shelf is very
 *     large
 */
public record ShelfFigures(Ring ring, Reach reach, Set<String> standing) {

  /**
   * The figures of a shelf: every paint alone, and all mixes of those that stand for it.
   *
   * @param paintIds all paints that count
   * @param members the lineup's own, which always stand for themselves
   */
  public static ShelfFigures of(
      NetWalk walk,
      OpticsTable table,
      WashStrengths washes,
      List<String> paintIds,
      List<String> members) {
    Set<String> standing = new LinkedHashSet<>(Representatives.of(table, washes, paintIds));
    standing.addAll(members);
    Ring.Gatherer ring = new Ring.Gatherer();
    Reach.Gatherer reach = new Reach.Gatherer();
    Net.Sink sink = Sinks.of(ring, reach);
    walk.all(table.indicesOf(List.copyOf(standing)), sink);
    for (String id : paintIds) {
      if (!standing.contains(id)) {
        walk.with(table.indexOf(id), new int[0], sink);
      }
    }
    return new ShelfFigures(ring.ring(), reach.reach(), standing);
  }
}
