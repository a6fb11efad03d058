package org.panwright.app.hand;

/** A place where what is held can be put down. */
public sealed interface Spot {
  /** A well of the box looked at. */
  record AtWell(String wellId) implements Spot {}

  /** The shelf. */
  record AtShelf() implements Spot {}
}
