package org.panwright.analysis.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Remedy;
import org.panwright.analysis.mud.PairMud;
import org.panwright.analysis.search.Case;
import org.panwright.paint.Paint;

/** Finds the owned paint of nearly the same hue that muddies less in the place of another. */
final class MudRemedy {
  /** A replacement must bring a paint's loss down by this. */
  private static final double CLEANER_BY = 0.05;

  /** The share of all that pairs lose by mud which an exchange has to take away. */
  private static final double SHARE = 0.25;

  private final Case open;
  private final Bench bench;

  private record Tried(Swap swap, double mud) {}

  private MudRemedy(Case open, Bench bench) {
    this.open = open;
    this.bench = bench;
  }

  /** A muddy paint with the cleanest of those that may stand in its place. */
  static MuddyPaint of(Case open, Bench bench, Trials trials, MuddyPaint muddy) {
    if (!open.seats().sitsOnce(muddy.paintId())) {
      return muddy;
    }
    MudRemedy search = new MudRemedy(open, bench);
    List<Tried> tried = new ArrayList<>();
    for (Paint paint : search.ofTheHueOf(muddy.paintId())) {
      double loss = search.meanLoss(muddy.paintId(), paint.id());
      if (loss < muddy.loss() - CLEANER_BY) {
        tried.add(new Tried(Swap.of(open, muddy.paintId(), paint.id()), loss));
      }
    }
    return trials
        .first(muddy, 0, swaps(tried))
        .map(
            remedy ->
                muddy.with(remedy, search.meanLoss(muddy.paintId(), remedy.arrivingId().get())))
        .orElse(muddy);
  }

  /** The exchange that takes most of the mud out of the pairs that lose half their colour. */
  static Optional<Remedy> of(Case open, Bench bench, Trials trials, MuddyPairs pairs) {
    MudRemedy search = new MudRemedy(open, bench);
    Map<String, Double> own = new HashMap<>();
    for (String id : open.ids()) {
      own.put(id, search.mud(id, id));
    }
    List<Tried> tried = new ArrayList<>();
    for (String id : open.ids()) {
      if (own.get(id) >= SHARE * pairs.lost() && open.seats().sitsOnce(id)) {
        for (Paint paint : search.ofTheHueOf(id)) {
          double left = pairs.lost() - own.get(id) + search.mud(id, paint.id());
          if (left <= (1 - SHARE) * pairs.lost()) {
            tried.add(new Tried(Swap.of(open, id, paint.id()), left));
          }
        }
      }
    }
    return trials.first(pairs, SHARE * pairs.lost(), swaps(tried));
  }

  private static List<Swap> swaps(List<Tried> tried) {
    return tried.stream().sorted(Comparator.comparingDouble(Tried::mud)).map(Tried::swap).toList();
  }

  private List<Paint> ofTheHueOf(String paintId) {
    return open.atHand().stream()
        .filter(paint -> open.looks().sameHue(paintId, paint.id()))
        .toList();
  }

  /** What a paint in the place of another loses in pairs that lose half their colour. */
  private double mud(String leavingId, String paintId) {
    return pairs(leavingId, paintId).stream()
        .mapToDouble(PairMud::loss)
        .filter(loss -> loss >= MuddyPairs.LOSS_FROM)
        .sum();
  }

  /** The mean loss of a paint in the place of another; all of it if it has no coloured pair. */
  private double meanLoss(String leavingId, String paintId) {
    OptionalDouble mean = pairs(leavingId, paintId).stream().mapToDouble(PairMud::loss).average();
    return mean.orElse(1);
  }

  private List<PairMud> pairs(String leavingId, String paintId) {
    return open.ids().stream()
        .filter(other -> !other.equals(leavingId))
        .flatMap(other -> bench.mud(paintId, other).stream())
        .filter(pair -> !pair.isGrey())
        .toList();
  }
}
