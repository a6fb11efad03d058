package org.panwright.analysis.arrange;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.panwright.kit.Filling;

/**
 * A lineup laid into its wells.
 *
 * @param fillings by well id
 * @param before the cost as the lineup stands
 * @param cost the cost of this arrangement, in the unit of its order
 * @param bound no arrangement of the same paints and pins costs less
 */
public record Arrangement(Map<String, Filling> fillings, double before, double cost, double bound) {
  private static final double ROUNDING = 1e-9;

  public Arrangement {
    fillings = Collections.unmodifiableMap(new LinkedHashMap<>(fillings));
  }

  /** Whether none is better. */
  public boolean isBest() {
    return cost <= bound + ROUNDING;
  }
}
