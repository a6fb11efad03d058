package org.panwright.kit;

/** What a well is made to hold. */
public enum WellKind {
  PAN,
  HALF_PAN,
  DAB
}
