package org.panwright.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Hue;
import org.panwright.colour.Oklch;
import org.panwright.kit.Edit;
import org.panwright.mixing.MixGrid;
import org.panwright.paint.Paint;

/** Finds the paints and pairs of a lineup that turn mixes to mud. */
final class MuddySearch {
  private static final int PAIRS_NAMED = 3;

  /** Fewer coloured paints than this have no typical loss. */
  private static final int FEWEST = 5;

  /** A paint whose milk wash lies farther off is no replacement, OKLCh degrees. */
  private static final double SAME_HUE_DEG = 30;

  /** A replacement must bring the loss down by this. */
  private static final double CLEANER_BY = 0.05;

  private MuddySearch() {}

  static List<Finding> of(Case open, Mud mud) {
    List<Finding> found = new ArrayList<>();
    if (mud.byPaint().size() >= FEWEST) {
      for (Map.Entry<String, Double> entry : mud.byPaint().entrySet()) {
        double typical = typical(mud.byPaint(), entry.getKey());
        double loss = entry.getValue();
        if (loss >= MuddyPaint.LOSS_FROM && loss >= MuddyPaint.TIMES_TYPICAL * typical) {
          found.add(muddy(open, entry.getKey(), loss, typical));
        }
      }
    }
    List<PairMud> worst =
        mud.muddy().stream()
            .filter(pair -> pair.loss() >= MuddyPairs.LOSS_FROM)
            .limit(PAIRS_NAMED)
            .toList();
    if (!worst.isEmpty()) {
      found.add(new MuddyPairs(worst, mud.greys().stream().limit(PAIRS_NAMED).toList()));
    }
    return found;
  }

  /** The middle one of the losses of all paints but one; of an even number the lower. */
  static double typical(Map<String, Double> byPaint, String without) {
    double[] others =
        byPaint.entrySet().stream()
            .filter(entry -> !entry.getKey().equals(without))
            .mapToDouble(Map.Entry::getValue)
            .sorted()
            .toArray();
    return others[(others.length - 1) / 2];
  }

  private static MuddyPaint muddy(Case open, String paintId, double loss, double typical) {
    String cleaner = null;
    double least = loss - CLEANER_BY;
    Oklch body = open.body(paintId);
    for (Paint paint : open.atHand()) {
      Oklch other = open.body(paint.id());
      if (!other.isNeutral() && Hue.between(body.hueDeg(), other.hueDeg()) <= SAME_HUE_DEG) {
        double with = lossInPlaceOf(open, paintId, paint.id());
        if (with < least) {
          least = with;
          cleaner = paint.id();
        }
      }
    }
    Optional<String> instead = Optional.ofNullable(cleaner);
    Optional<Edit> cure = instead.map(id -> open.placeInWellOf(paintId, id));
    return new MuddyPaint(paintId, loss, typical, instead, instead.isPresent() ? least : 0, cure);
  }

  /** The mean loss of a paint that stands in the place of another. */
  private static double lossInPlaceOf(Case open, String leavingId, String paintId) {
    int leaving = open.table().indexOf(leavingId);
    int added = open.table().indexOf(paintId);
    int[] members = Arrays.stream(open.members()).map(m -> m == leaving ? added : m).toArray();
    MixGrid grid = MixGrid.of(open.table(), members, open.kit().washes(), () -> false);
    return Mud.of(open.table(), grid).byPaint().getOrDefault(paintId, 1.0);
  }
}
