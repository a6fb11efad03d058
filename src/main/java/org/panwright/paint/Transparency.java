package org.panwright.paint;

/** How much of a black line a dry stroke lets through; in order from clear to covering. */
public enum Transparency {
  TRANSPARENT,
  SEMI_TRANSPARENT,
  SEMI_OPAQUE,
  OPAQUE
}
