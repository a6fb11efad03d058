package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.List;
import org.panwright.analysis.finding.Doubt;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.worth.Earning;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;

/**
 * Finds for each paint of a lineup the nearest twin that earns more, or as much and comes first.
 */
final class NearTwinsSearch {
  private NearTwinsSearch() {}

  static List<NearTwins> of(Case open) {
    List<Earning> earnings = open.earnings();
    List<Lab> masstones = earnings.stream().map(e -> open.masstone(e.paintId())).toList();
    List<Lab> tints = earnings.stream().map(e -> open.tint(e.paintId())).toList();
    List<NearTwins> found = new ArrayList<>();
    for (int spare = 0; spare < earnings.size(); spare++) {
      NearTwins nearest = null;
      for (int keep = 0; keep < earnings.size(); keep++) {
        double masstone = Difference.ciede2000(masstones.get(keep), masstones.get(spare));
        double tint = Difference.ciede2000(tints.get(keep), tints.get(spare));
        double away = Math.max(masstone, tint);
        if (outranks(earnings, keep, spare)
            && away < NearTwins.NEARER_THAN
            && (nearest == null || away < Math.max(nearest.masstone(), nearest.tint()))) {
          nearest =
              twins(
                  open,
                  earnings.get(keep).paintId(),
                  earnings.get(spare).paintId(),
                  masstone,
                  tint);
        }
      }
      if (nearest != null) {
        found.add(nearest);
      }
    }
    return found;
  }

  private static NearTwins twins(
      Case open, String keepId, String spareId, double masstone, double tint) {
    Doubt doubt = Doubt.between(new Mixer(open.table()), Recipe.of(keepId), Recipe.of(spareId));
    return new NearTwins(keepId, spareId, masstone, tint, doubt, open.seats().empty(spareId));
  }

  private static boolean outranks(List<Earning> earnings, int keep, int spare) {
    int byEarning = Double.compare(earnings.get(keep).total(), earnings.get(spare).total());
    return byEarning > 0 || (byEarning == 0 && keep < spare);
  }
}
