package org.panwright.analysis.worth;

/**
 * What a paint earns its well: what the lineup loses when it alone leaves.
 *
 * @param paintId the paint
 * @param ringLost share of the hue ring's summed chroma that goes with it, 0..1
 * @param reachLost share of the reach's cells that goes with it, 0..1
 * @param subjects what goes with it of the colours of the places the lineup is taken to
 */
public record Earning(String paintId, double ringLost, double reachLost, SubjectsLost subjects) {
  /** Ring, reach and colours lost together, 0..3: what exchanges and orderings go by. */
  public double total() {
    return ringLost + reachLost + subjects.share();
  }

  /**
   * Whether it earns next to nothing: less than 1 % of the ring, less than 2 % of the reach, and no
   * colour of the place by 1 ΔE00.
   *
   * <p>Those are about what the net's own coarseness can make or hide.
   */
  public boolean isPassenger() {
    return ringLost < 0.01 && reachLost < 0.02 && subjects.by() < 1;
  }

  /**
   * Whether it earns little: less than 1 % of the ring, less than 5 % of the reach, and no colour
   * of the place by 1 ΔE00. A mix that stands in for such a paint makes it spare.
   */
  public boolean isLittle() {
    return ringLost < 0.01 && reachLost < 0.05 && subjects.by() < 1;
  }
}
