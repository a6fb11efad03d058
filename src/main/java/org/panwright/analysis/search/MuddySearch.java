package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.mud.Mud;
import org.panwright.analysis.mud.PairMud;

/** Finds the paints and pairs of a lineup that turn mixes to mud. */
final class MuddySearch {
  private static final int PAIRS_NAMED = 3;

  /** Fewer coloured paints than this have no typical loss. */
  private static final int FEWEST = 5;

  private MuddySearch() {}

  static List<Finding> of(Mud mud) {
    List<Finding> found = new ArrayList<>();
    if (mud.byPaint().size() >= FEWEST) {
      for (Map.Entry<String, Double> entry : mud.byPaint().entrySet()) {
        double typical = typical(mud.byPaint(), entry.getKey());
        double loss = entry.getValue();
        if (loss >= MuddyPaint.LOSS_FROM && loss >= MuddyPaint.TIMES_TYPICAL * typical) {
          found.add(
              new MuddyPaint(entry.getKey(), loss, typical, Optional.empty(), 0, Optional.empty()));
        }
      }
    }
    List<PairMud> bad =
        mud.muddy().stream().filter(pair -> pair.loss() >= MuddyPairs.LOSS_FROM).toList();
    if (!bad.isEmpty()) {
      found.add(
          new MuddyPairs(
              bad.stream().limit(PAIRS_NAMED).toList(),
              bad.size(),
              bad.stream().mapToDouble(PairMud::loss).sum(),
              mud.greys().stream().limit(PAIRS_NAMED).toList(),
              Optional.empty()));
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
}
