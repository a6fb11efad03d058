package org.panwright.kit;

/** What a lineup can be chosen for. */
public enum Aim {
  /** Clean hues all round. */
  RING,
  /** Many different colours. */
  REACH,
  /** The colours of a place. */
  SUBJECTS,
  /** A deep dark once dry. */
  DARKS,
  /** Transparent paints. */
  TRANSPARENCY
}
