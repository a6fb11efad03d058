package org.panwright.kit;

/** What a box has besides its wells. */
public enum FixtureKind {
  /** A dish or flat to mix on; nothing stands in it. */
  MIXING_AREA,
  /** A strip without pans, where dabs go. */
  DAB_STRIP,
  /** A magnet or magnetic sheet; it raises the pans that stand on it. */
  MAGNET,
  /** A clip or rail that holds pans. */
  CLIP
}
