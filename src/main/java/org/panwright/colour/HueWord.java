package org.panwright.colour;

/**
 * A painter's word for a stretch of the {@link Oklch} hue circle.
 *
 * <p>The words cover the circle without gap or overlap; each holds from its lower bound (inclusive)
 * to the next word's (exclusive). The bounds are our own division of the circle (common practice of
 * the trade puts, for instance, middle yellow near 93°, ultramarine tints near 265°–275°); they are
 * a naming aid and enter no other figure.
 */
public enum HueWord {
  ROSE(0),
  RED(18),
  ORANGE_RED(36),
  ORANGE(48),
  GOLDEN_YELLOW(68),
  YELLOW(85),
  GREENISH_YELLOW(102),
  YELLOW_GREEN(116),
  GREEN(136),
  BLUISH_GREEN(160),
  TURQUOISE(188),
  GREENISH_BLUE(216),
  BLUE(238),
  VIOLET_BLUE(266),
  VIOLET(286),
  PURPLE(316),
  MAGENTA(340);

  private final double fromDeg;

  HueWord(double fromDeg) {
    this.fromDeg = fromDeg;
  }

  /** The word for a hue angle in degrees, any turn. */
  public static HueWord of(double hueDeg) {
    double hue = Hue.normal(hueDeg);
    HueWord[] words = values();
    for (int i = words.length - 1; i > 0; i--) {
      if (hue >= words[i].fromDeg) {
        return words[i];
      }
    }
    return ROSE;
  }

  /** The lower bound in degrees, inclusive. */
  public double fromDeg() {
    return fromDeg;
  }

  /** The upper bound in degrees, exclusive; 360 for the last word. */
  public double toDeg() {
    return ordinal() + 1 < values().length ? values()[ordinal() + 1].fromDeg : 360;
  }
}
