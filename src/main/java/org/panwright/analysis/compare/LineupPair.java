package org.panwright.analysis.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.worth.ShelfFigures;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * Two lineups of different boxes carried together.
 *
 * @param firstId a lineup
 * @param secondId a lineup for another box
 * @param reach how many colours all their paints mix together
 * @param ringShare the sum of their common hue ring as a share of that of all lineups together,
 *     0..1
 * @param gain colours over the better of the two alone
 * @param doubled ids of the paints in both
 */
public record LineupPair(
    String firstId, String secondId, int reach, double ringShare, int gain, List<String> doubled) {
  public LineupPair {
    doubled = List.copyOf(doubled);
  }

  /**
   * All pairs of lineups for different boxes, those that reach most first; of equal reach those
   * with the fuller ring.
   *
   * @param cancelled asked now and then
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public static List<LineupPair> all(Kit kit, PigmentLibrary library, BooleanSupplier cancelled) {
    List<Lineup> lineups =
        kit.lineups().stream().filter(lineup -> !lineup.fillings().isEmpty()).toList();
    if (lineups.stream().map(Lineup::boxId).distinct().count() < 2) {
      return List.of();
    }
    List<String> aboard =
        lineups.stream().flatMap(lineup -> paints(kit, lineup).stream()).distinct().toList();
    List<Paint> carried = aboard.stream().map(id -> kit.shelf().find(id).orElseThrow()).toList();
    OpticsTable table = OpticsTable.of(carried, library, kit.paper());
    NetWalk walk = new NetWalk(table, kit.washes(), cancelled);
    double all = figures(kit, table, walk, aboard).ring().sum();
    List<Integer> alone = new ArrayList<>();
    for (Lineup lineup : lineups) {
      alone.add(figures(kit, table, walk, paints(kit, lineup)).reach().size());
    }
    List<LineupPair> pairs = new ArrayList<>();
    for (int i = 0; i < lineups.size(); i++) {
      for (int j = i + 1; j < lineups.size(); j++) {
        if (!lineups.get(i).boxId().equals(lineups.get(j).boxId())) {
          int better = Math.max(alone.get(i), alone.get(j));
          pairs.add(pair(kit, table, walk, lineups.get(i), lineups.get(j), better, all));
        }
      }
    }
    pairs.sort(
        Comparator.comparingInt(LineupPair::reach)
            .thenComparingDouble(LineupPair::ringShare)
            .reversed());
    return List.copyOf(pairs);
  }

  private static LineupPair pair(
      Kit kit,
      OpticsTable table,
      NetWalk walk,
      Lineup first,
      Lineup second,
      int better,
      double ringOfAll) {
    List<String> firstPaints = paints(kit, first);
    List<String> secondPaints = paints(kit, second);
    Set<String> together = new LinkedHashSet<>(firstPaints);
    together.addAll(secondPaints);
    ShelfFigures joint = figures(kit, table, walk, List.copyOf(together));
    return new LineupPair(
        first.id(),
        second.id(),
        joint.reach().size(),
        ringOfAll == 0 ? 0 : Math.min(1, joint.ring().sum() / ringOfAll),
        joint.reach().size() - better,
        firstPaints.stream().filter(secondPaints::contains).toList());
  }

  private static ShelfFigures figures(
      Kit kit, OpticsTable table, NetWalk walk, List<String> paintIds) {
    return ShelfFigures.of(walk, table, kit.washes(), paintIds, paintIds);
  }

  private static List<String> paints(Kit kit, Lineup lineup) {
    return lineup.paintIds(kit.boxOf(lineup));
  }
}
