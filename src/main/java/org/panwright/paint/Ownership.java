package org.panwright.paint;

/** How a paint stands to the painter's shelf. */
public enum Ownership {
  /** A tube or pan is there. */
  OWNED,
  /** Tried as a dot on a card, not owned. */
  TRIED,
  /** On the wish list. */
  WISHED
}
