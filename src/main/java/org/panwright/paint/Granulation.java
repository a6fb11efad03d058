package org.panwright.paint;

/** How visibly the pigment settles into the hollows of the paper. */
public enum Granulation {
  NONE,
  SLIGHT,
  STRONG
}
