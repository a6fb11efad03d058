package org.panwright.analysis.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Filling;
import org.panwright.kit.Lineup;

/**
 * One thing to do in the real box to go from one lineup to another.
 *
 * @param paintId the paint moved
 * @param fromWellId the well it leaves; empty if it comes from the shelf
 * @param toWellId the well it goes to; empty if it goes back to the shelf
 */
public record Move(String paintId, Optional<String> fromWellId, Optional<String> toWellId) {
  /**
   * The moves from one lineup to another of the same box: first what goes to the shelf, then what
   * changes wells, then what comes in. Paints that stay where they are do not move. None if the
   * boxes differ.
   *
   * <p>A paint in several wells keeps those it keeps; the others are paired off in the order of the
   * wells.
   */
  static List<Move> between(Lineup from, Lineup to) {
    if (!from.boxId().equals(to.boxId())) {
      return List.of();
    }
    List<Move> out = new ArrayList<>();
    List<Move> across = new ArrayList<>();
    List<Move> in = new ArrayList<>();
    Set<String> paints = new LinkedHashSet<>();
    from.fillings().values().forEach(filling -> paints.add(filling.paintId()));
    to.fillings().values().forEach(filling -> paints.add(filling.paintId()));
    for (String paint : paints) {
      List<String> left = wells(from, to, paint);
      List<String> taken = wells(to, from, paint);
      for (int i = 0; i < Math.max(left.size(), taken.size()); i++) {
        Optional<String> source = i < left.size() ? Optional.of(left.get(i)) : Optional.empty();
        Optional<String> target = i < taken.size() ? Optional.of(taken.get(i)) : Optional.empty();
        List<Move> kind = target.isEmpty() ? out : source.isEmpty() ? in : across;
        kind.add(new Move(paint, source, target));
      }
    }
    List<Move> moves = new ArrayList<>(out);
    moves.addAll(across);
    moves.addAll(in);
    return moves;
  }

  /** The wells in which {@code one} has a paint and {@code other} has not. */
  private static List<String> wells(Lineup one, Lineup other, String paintId) {
    return one.fillings().entrySet().stream()
        .filter(entry -> entry.getValue().paintId().equals(paintId))
        .map(Map.Entry::getKey)
        .filter(well -> other.in(well).map(Filling::paintId).filter(paintId::equals).isEmpty())
        .toList();
  }
}
