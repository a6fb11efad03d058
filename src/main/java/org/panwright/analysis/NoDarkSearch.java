package org.panwright.analysis;

import java.util.List;
import java.util.Optional;
import org.panwright.paint.Paint;

/** Looks for the paint that brings a real dark to a lineup without one. */
final class NoDarkSearch {
  private NoDarkSearch() {}

  static List<Finding> of(Case open) {
    Optional<Dark> darkest = open.figures().darkest();
    if (darkest.isEmpty() || darkest.get().isReal()) {
      return List.of();
    }
    String suggested = null;
    double lowest = Dark.REAL_BELOW;
    for (Paint paint : open.atHand()) {
      DarkestMix with = new DarkestMix();
      open.walk().with(open.table().indexOf(paint.id()), open.members(), with);
      if (with.lowest() < lowest) {
        lowest = with.lowest();
        suggested = paint.id();
      }
    }
    if (suggested == null) {
      double dryL = darkest.get().dryL();
      return List.of(
          new NoDark(darkest.get(), Optional.empty(), dryL, Optional.empty(), Optional.empty()));
    }
    Exchange exchange = Exchange.bringing(open, suggested);
    return List.of(
        new NoDark(
            darkest.get(), Optional.of(suggested), lowest, exchange.leavingId(), exchange.edit()));
  }
}
