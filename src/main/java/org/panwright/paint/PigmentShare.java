package org.panwright.paint;

import java.util.Objects;

/**
 * A pigment's share of a paint by volume of pigment.
 *
 * @param share above 0, up to 1
 */
public record PigmentShare(PigmentName pigment, double share) {
  public PigmentShare {
    Objects.requireNonNull(pigment, "pigment");
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException("share of " + pigment + " must lie in 0..1, was " + share);
    }
  }
}
