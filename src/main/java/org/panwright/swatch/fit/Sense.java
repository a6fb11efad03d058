package org.panwright.swatch.fit;

import java.util.List;
import java.util.Optional;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;

/** Whether a set of swatches can be meant: the questions asked before any fit. */
final class Sense {
  private static final double ALIKE = 0.5;
  private static final double DARKEST_PAPER = 60;
  private static final double CLEARLY_LIGHTER = 8;
  private static final double LOWEST_LOAD = 1e-4;
  private static final double HIGHEST_LOAD = 1e4;

  private Sense() {}

  /** The first reason against the set, if there is one. */
  static Optional<FitRefusal> check(SwatchSet set) {
    List<Swatch> swatches = set.swatches();
    if (swatches.isEmpty()) {
      return Optional.of(new FitRefusal.NoSwatches());
    }
    double usual = set.usualLoad();
    if (!(usual >= LOWEST_LOAD && usual <= HIGHEST_LOAD)) {
      return Optional.of(new FitRefusal.LoadsOutOfScale(usual));
    }
    double lightest = swatches.stream().mapToDouble(s -> s.ground().lab().l()).max().orElseThrow();
    if (lightest < DARKEST_PAPER) {
      return Optional.of(new FitRefusal.NoPaper(lightest));
    }
    for (String paint : set.paints()) {
      if (leavesNoMark(paint, swatches)) {
        return Optional.of(new FitRefusal.NoMark(paint));
      }
    }
    for (Swatch swatch : swatches) {
      double ground = swatch.ground().lab().l();
      if (ground >= DARKEST_PAPER && swatch.reading().lab().l() > ground + CLEARLY_LIGHTER) {
        return Optional.of(new FitRefusal.LighterThanGround(swatch.name()));
      }
    }
    return allAlike(swatches) ? Optional.of(new FitRefusal.AllAlike()) : Optional.empty();
  }

  private static boolean leavesNoMark(String paint, List<Swatch> swatches) {
    List<Swatch> coats =
        swatches.stream()
            .filter(s -> s.paints().stream().anyMatch(share -> share.paint().equals(paint)))
            .toList();
    return coats.stream().allMatch(s -> s.reading().ciede2000(s.ground()) < ALIKE);
  }

  private static boolean allAlike(List<Swatch> swatches) {
    Swatch first = swatches.get(0);
    boolean differentPaint =
        swatches.stream().anyMatch(other -> !other.paints().equals(first.paints()));
    return differentPaint
        && swatches.stream().allMatch(other -> first.reading().ciede2000(other.reading()) < ALIKE);
  }
}
