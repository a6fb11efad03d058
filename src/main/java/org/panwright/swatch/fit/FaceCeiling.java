package org.panwright.swatch.fit;

import java.util.List;
import org.panwright.mixing.Surface;

/**
 * What k1 of a bare ground must stay below, so that no coat's face throws back more than the
 * darkest value read of it once its gum has smoothed it.
 *
 * <pre>ceiling(gloss) = min(0.05, min over places of 0.95 · darkest · exp(gloss · load))</pre>
 *
 * <p>Example: a coat of load 2 that reads 0.01 allows 0.0095 at gloss 0, and 0.0258 at gloss 0.5.
 *
 * @param places what was read, of coats and of what lies beneath them
 */
record FaceCeiling(List<Place> places) {
  private static final double HIGHEST = 0.05;
  private static final double LEAST_READING = 1e-4;

  /**
   * One place that was read.
   *
   * @param darkest the lowest value read, 0..1
   * @param load all paint on it in usual coats, 0 on a bare ground
   */
  record Place(double darkest, double load) {}

  FaceCeiling {
    places = List.copyOf(places);
  }

  /** The ceiling at a gloss per usual coat. */
  double at(double gloss) {
    return Math.min(HIGHEST, allowed(gloss, lowestPlace(gloss)));
  }

  /** ∂ ln ceiling / ∂ gloss: the load of the place that decides, 0 where none does. */
  double steepness(double gloss) {
    int place = lowestPlace(gloss);
    return allowed(gloss, place) < HIGHEST ? places.get(place).load() : 0;
  }

  private int lowestPlace(double gloss) {
    int lowest = -1;
    for (int i = 0; i < places.size(); i++) {
      if (lowest < 0 || allowed(gloss, i) < allowed(gloss, lowest)) {
        lowest = i;
      }
    }
    return lowest;
  }

  private double allowed(double gloss, int place) {
    if (place < 0) {
      return HIGHEST;
    }
    Place read = places.get(place);
    return Surface.BELOW_DARKEST
        * Math.max(LEAST_READING, read.darkest())
        * Math.exp(gloss * read.load());
  }
}
