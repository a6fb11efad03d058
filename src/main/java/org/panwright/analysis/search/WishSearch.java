package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Wish;
import org.panwright.analysis.reach.HueArc;
import org.panwright.analysis.reach.Representatives;
import org.panwright.analysis.reach.Ring;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;

/**
 * Finds tried and wished-for paints worth having: with them the lineup has an arc of at least 15°
 * of which the shelf has less than 65 %, by the measure of a hue gap.
 */
final class WishSearch {
  private WishSearch() {}

  static List<Finding> of(Case open) {
    double[] shelf = HueArc.closed(open.shelf().ring().toArray());
    List<Finding> found = new ArrayList<>();
    List<String> inside = open.paints().stream().map(Paint::id).toList();
    List<String> wished =
        open.kit().shelf().paints().stream()
            .filter(each -> each.ownership() != Ownership.OWNED && !inside.contains(each.id()))
            .map(Paint::id)
            .toList();
    for (String id : Representatives.of(open.table(), open.kit().washes(), wished)) {
      Ring.Gatherer with = new Ring.Gatherer(open.figures().ring());
      open.walk().with(open.table().indexOf(id), open.members(), with);
      double[] brought = HueArc.closed(with.ring().toArray());
      HueArc.missing(shelf, brought).stream()
          .max(Comparator.comparingInt(HueArc::steps))
          .ifPresent(
              arc ->
                  found.add(
                      new Wish(
                          id,
                          arc.fromDeg(),
                          arc.toDeg(),
                          arc.highest(shelf),
                          arc.highest(brought),
                          Optional.empty())));
    }
    return found;
  }
}
