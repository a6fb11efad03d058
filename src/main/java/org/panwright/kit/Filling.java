package org.panwright.kit;

import java.util.Objects;

/** The paint in one well and how much of it. */
public record Filling(String paintId, Fill fill) {
  public Filling {
    Objects.requireNonNull(fill, "fill");
    if (paintId.isBlank()) {
      throw new IllegalArgumentException("a filling names a paint");
    }
  }
}
