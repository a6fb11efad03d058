package org.panwright.app.hand;

import java.util.Optional;

/**
 * What is held at a moment.
 *
 * @param held what was picked up
 * @param means how it was picked up
 * @param spot where it hovers, if over a spot
 * @param outcome what putting down there would bring
 */
public record Holding(Held held, Means means, Optional<Spot> spot, Optional<Outcome> outcome) {
  /** How something is carried. */
  public enum Means {
    /** Dragged with the mouse, pen or finger. */
    POINTER,
    /** Picked up with a key; arrows move, Enter puts down. */
    KEYS
  }

  /** Whether it hovers over this well. */
  public boolean isOver(String wellId) {
    return spot.isPresent() && spot.get().equals(new Spot.AtWell(wellId));
  }

  /** Whether it was picked up from this well. */
  public boolean isFrom(String wellId) {
    return held.equals(new Held.FromWell(wellId));
  }
}
