package org.panwright.swatch.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.panwright.mixing.Surface;

/**
 * What k1 of a bare ground must stay below, so that no coat's face throws back more than the
 * darkest value read of it once its gum has smoothed it.
 *
 * <pre>ceiling(gloss) = min(0.05, min over places of 0.95 · darkest · exp(gloss · load))</pre>
 *
 * <p>Example: a coat of load 2 that reads 0.01 allows 0.0095 at gloss 0, and 0.0258 at gloss 0.5.
 *
 * @param places what was read, of coats and of what lies beneath them; of those of one load only
 *     the darkest is kept, since no other can decide
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
  record Place(double darkest, double load) {
    /** What k1 of a bare ground may be at most for this place. */
    private double allowed(double gloss) {
      return Surface.BELOW_DARKEST * Math.max(LEAST_READING, darkest) * Math.exp(gloss * load);
    }
  }

  FaceCeiling {
    Map<Double, Place> darkest = new LinkedHashMap<>();
    for (Place place : places) {
      darkest.merge(place.load(), place, (one, two) -> two.darkest() < one.darkest() ? two : one);
    }
    places = List.copyOf(darkest.values());
  }

  /** The ceiling at a gloss per usual coat. */
  double at(double gloss) {
    return places.stream().mapToDouble(place -> place.allowed(gloss)).reduce(HIGHEST, Math::min);
  }

  /** ∂ ln ceiling / ∂ gloss: the load of the place that decides, 0 where none does. */
  double steepness(double gloss) {
    double ceiling = at(gloss);
    return places.stream()
        .filter(place -> place.allowed(gloss) <= ceiling && ceiling < HIGHEST)
        .findFirst()
        .map(Place::load)
        .orElse(0.0);
  }
}
