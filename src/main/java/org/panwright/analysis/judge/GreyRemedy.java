package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Remedy;
import org.panwright.analysis.search.Case;
import org.panwright.analysis.search.DarkSearch;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.WetLook;
import org.panwright.paint.Paint;

/** Finds the owned paint of nearly the same hue with which fewer darks dry to a grey. */
final class GreyRemedy {
  /** The share of such mixes which an exchange has to take away. */
  private static final double SHARE = 0.25;

  private final Case open;
  private final Bench bench;
  private final WetLook look;
  private final Map<List<String>, Boolean> known = new HashMap<>();

  private record Tried(Swap swap, int left) {}

  private GreyRemedy(Case open, Bench bench) {
    this.open = open;
    this.bench = bench;
    look = WetLook.of(new Mixer(open.table()), open.kit().shelf());
  }

  static Optional<Remedy> of(Case open, Bench bench, Trials trials, DriesGrey grey) {
    GreyRemedy search = new GreyRemedy(open, bench);
    List<Tried> tried = new ArrayList<>();
    for (String id : open.ids()) {
      int own = search.count(id, id);
      if (own >= SHARE * grey.count() && open.seats().sitsOnce(id)) {
        for (Paint paint : open.atHand()) {
          if (open.looks().sameHue(id, paint.id())) {
            int left = grey.count() - own + search.count(id, paint.id());
            if (left <= (1 - SHARE) * grey.count()) {
              tried.add(new Tried(Swap.of(open, id, paint.id()), left));
            }
          }
        }
      }
    }
    List<Swap> swaps =
        tried.stream().sorted(Comparator.comparingInt(Tried::left)).map(Tried::swap).toList();
    return trials.first(grey, SHARE * grey.count(), swaps);
  }

  /** How many mixes with a paint in the place of another dry to a grey. */
  private int count(String leavingId, String paintId) {
    int count = deceives(paintId, paintId) ? 1 : 0;
    for (String other : open.ids()) {
      if (!other.equals(leavingId) && deceives(paintId, other)) {
        count++;
      }
    }
    return count;
  }

  private boolean deceives(String first, String second) {
    return known.computeIfAbsent(
        List.of(first, second),
        pair ->
            DarkSearch.deceiver(open, look, bench.grid(), bench.row(first), bench.row(second))
                .isPresent());
  }
}
