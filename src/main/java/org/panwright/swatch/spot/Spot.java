package org.panwright.swatch.spot;

import java.util.Objects;
import java.util.Optional;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/**
 * A place the painter points at.
 *
 * @param paintId the paint of a coat; empty for all else, and while nobody said
 * @param middle in pixels of the picture
 * @param sidePx of the square that is read, in pixels of the picture, above 0
 */
public record Spot(SpotKind kind, Optional<String> paintId, Point middle, double sidePx) {
  public Spot {
    Objects.requireNonNull(kind, "kind");
    if (!(sidePx > 0)) {
      throw new IllegalArgumentException("a spot has an extent, was " + sidePx);
    }
  }

  /** The square that is read. */
  Zone zone() {
    return Zone.around(middle, sidePx);
  }

  /** The same of another kind. */
  public Spot withKind(SpotKind changed) {
    return new Spot(changed, paintId, middle, sidePx);
  }

  /** The same of another paint. */
  public Spot withPaint(Optional<String> changed) {
    return new Spot(kind, changed, middle, sidePx);
  }

  /** The same elsewhere. */
  public Spot at(Point changed) {
    return new Spot(kind, paintId, changed, sidePx);
  }

  /** The same of another size. */
  public Spot withSide(double changed) {
    return new Spot(kind, paintId, middle, changed);
  }
}
