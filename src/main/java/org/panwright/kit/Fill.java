package org.panwright.kit;

/** How much of its well a paint fills. */
public enum Fill {
  /** To the usual height. */
  FULL,
  /** To half of it. */
  HALF,
  /** A dab: 0.1–0.3 ml, enough for a few small sketches (common practice). */
  DAB
}
