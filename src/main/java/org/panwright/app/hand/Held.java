package org.panwright.app.hand;

/** What the painter holds between picking up and putting down. */
public sealed interface Held {
  /** A paint taken from the shelf; it stays on the shelf as well. */
  record FromShelf(String paintId) implements Held {}

  /** The paint of a well of the lineup looked at. */
  record FromWell(String wellId) implements Held {}
}
