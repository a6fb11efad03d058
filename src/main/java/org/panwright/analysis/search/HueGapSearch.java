package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.reach.HueArc;
import org.panwright.paint.Paint;

/**
 * Finds the hue gaps of a lineup and for each the paint that closes most of it.
 *
 * <p>Suggestions are owned paints only, and each has really been added to the net.
 */
final class HueGapSearch {
  /** A paint that closes less than this share of a gap is not worth suggesting for it. */
  private static final double WORTH_SUGGESTING = 0.10;

  private final Case open;
  private final double[] has;
  private final double[] wanted;
  private final Map<String, double[]> ringsWith = new HashMap<>();
  private final Map<String, Exchange> exchanges = new HashMap<>();

  private HueGapSearch(Case open) {
    this.open = open;
    has = HueArc.closed(open.chroma());
    wanted = HueArc.closed(open.shelf().ring().toArray());
  }

  static List<Finding> of(Case open) {
    return new HueGapSearch(open).gaps();
  }

  private List<Finding> gaps() {
    List<Finding> gaps = new ArrayList<>();
    for (HueArc arc : HueArc.missing(has, wanted)) {
      gaps.add(gap(arc));
    }
    return gaps;
  }

  private HueGap gap(HueArc arc) {
    String suggested = null;
    double closes = WORTH_SUGGESTING;
    for (Paint paint : open.atHand()) {
      double share = arc.closes(has, ringWith(paint.id()), wanted);
      if (share > closes) {
        closes = share;
        suggested = paint.id();
      }
    }
    double best = arc.highest(has);
    double possible = arc.highest(wanted);
    if (suggested == null) {
      return new HueGap(
          arc.fromDeg(),
          arc.toDeg(),
          best,
          possible,
          Optional.empty(),
          0,
          Optional.empty(),
          Optional.empty());
    }
    Exchange exchange = exchanges.computeIfAbsent(suggested, id -> Exchange.bringing(open, id));
    return new HueGap(
        arc.fromDeg(),
        arc.toDeg(),
        best,
        possible,
        Optional.of(suggested),
        closes,
        exchange.leavingId(),
        exchange.edit());
  }

  private double[] ringWith(String paintId) {
    return ringsWith.computeIfAbsent(paintId, id -> HueArc.closed(open.ringWith(id).toArray()));
  }
}
