package org.panwright.swatch.spot;

/** What lies at a place the painter points at. */
public enum SpotKind {
  /** Bare paper, by which light and camera are taken out. */
  PAPER,
  /** A neutral card of known reflectance. */
  CARD,
  /** A paint alone at full strength. */
  FULL,
  /** A paint alone, thinned. */
  WASH,
  /** As much white as paint. */
  WITH_WHITE,
  /** As much black as paint. */
  WITH_BLACK,
  /** A paint at full strength over a black line. */
  OVER_LINE,
  /** The black line itself, bare. */
  BARE_LINE;

  /** Whether it is a coat of a paint. */
  public boolean isCoat() {
    return this != PAPER && this != CARD && this != BARE_LINE;
  }

  /** Whether a paint alone lies over paper there. */
  boolean isAlone() {
    return this == FULL || this == WASH;
  }
}
