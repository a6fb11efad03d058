package org.panwright.paint;

/**
 * Lightfastness category of ASTM D4303 by colour change of an exposed tint: I (ΔE*ab up to 4), II
 * (to 8), III (to 16), IV (to 24), V (above); {@code UNRATED} where none is known.
 *
 * <p>ASTM D5067 admits I and II for artists' watercolours. Bounds of IV and V quoted from memory.
 */
public enum Lightfastness {
  I,
  II,
  III,
  IV,
  V,
  UNRATED;

  /** Whether the category is III or worse; false when unrated. */
  public boolean isPoor() {
    return this == III || this == IV || this == V;
  }
}
