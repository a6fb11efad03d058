package org.panwright.paint;

import java.util.ArrayList;
import java.util.List;

/**
 * The load each wash leaves on the paper, relative to a masstone coat.
 *
 * @param loads one for each {@link Wash} in its order, falling, above 0 and up to 4
 */
public record WashStrengths(List<Double> loads) {
  /**
   * Working values: butter 1, cream 0.55, milk 0.25, coffee 0.10, tea 0.04.
   *
   * <p>Common practice, not standardised: the names stand for roughly 1 part paint to 0–0.25, 1,
   * 3–4, 8–10 and 15–20 parts water, and thin washes also lie thinner.
   */
  public static final WashStrengths USUAL = new WashStrengths(List.of(1.0, 0.55, 0.25, 0.10, 0.04));

  public WashStrengths {
    loads = List.copyOf(loads);
    if (loads.size() != Wash.values().length) {
      throw new IllegalArgumentException(
          "there are " + Wash.values().length + " wash strengths, was " + loads.size());
    }
    double previous = Double.POSITIVE_INFINITY;
    for (double load : loads) {
      if (!(load > 0 && load <= 4 && load < previous)) {
        throw new IllegalArgumentException("wash strengths must fall within 4..0, were " + loads);
      }
      previous = load;
    }
  }

  /** The load of a wash. */
  public double load(Wash wash) {
    return loads.get(wash.ordinal());
  }

  /** The strengths with one load changed. */
  public WashStrengths with(Wash wash, double load) {
    List<Double> changed = new ArrayList<>(loads);
    changed.set(wash.ordinal(), load);
    return new WashStrengths(changed);
  }
}
