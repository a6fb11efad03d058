package org.panwright.paint;

/** How much colour stays when a dry stroke is wetted and lifted with a damp brush. */
public enum Staining {
  NONE,
  LOW,
  MEDIUM,
  HIGH
}
