package org.panwright.kit;

import java.util.Objects;
import java.util.Optional;
import org.panwright.paint.Lightfastness;

/**
 * What every proposed paint has to keep to; what the painter says must be in is not excused.
 *
 * @param ownedOnly only what is at hand
 * @param singlePigment only paints of one pigment
 * @param noCadmium no paint with a cadmium pigment
 * @param lightfastness the worst category of ASTM D4303 allowed; unrated paints are then left out
 */
public record PaintRules(
    boolean ownedOnly,
    boolean singlePigment,
    boolean noCadmium,
    Optional<Lightfastness> lightfastness) {
  /** Only what is at hand. */
  public static final PaintRules AT_HAND = new PaintRules(true, false, false, Optional.empty());

  public PaintRules {
    Objects.requireNonNull(lightfastness, "lightfastness");
  }
}
