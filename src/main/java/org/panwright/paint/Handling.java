package org.panwright.paint;

import java.util.Objects;

/** How a paint behaves under the brush and in the light. */
public record Handling(
    Transparency transparency,
    Staining staining,
    Granulation granulation,
    Lightfastness lightfastness) {
  public Handling {
    Objects.requireNonNull(transparency, "transparency");
    Objects.requireNonNull(staining, "staining");
    Objects.requireNonNull(granulation, "granulation");
    Objects.requireNonNull(lightfastness, "lightfastness");
  }
}
