package org.panwright.analysis.arrange;

/** By what a lineup can be laid into its wells. */
public enum WellOrder {
  /** Yellow, orange, red, violet, blue, green, then earths and neutrals. */
  HUE,
  /** From the warmest to the coolest. */
  WARM_TO_COOL,
  /** From the lightest masstone to the darkest. */
  LIGHT_TO_DARK,
  /** Strong stainers away from light, weak paints. */
  KIND_NEIGHBOURS,
  /** In the order they sit in now; of use with the mirror for the left hand. */
  AS_THEY_ARE
}
