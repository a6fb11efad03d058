package org.panwright.paint;

import java.util.Objects;
import java.util.Optional;

/**
 * Optics a paint had before, kept so that there is a way back.
 *
 * @param optics empty where the paint was estimated from its pigments
 * @param origin where they came from
 */
public record FormerOptics(Optional<Optics> optics, OpticsOrigin origin) {
  public FormerOptics {
    Objects.requireNonNull(optics, "optics");
    Objects.requireNonNull(origin, "origin");
  }
}
