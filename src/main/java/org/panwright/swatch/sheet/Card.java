package org.panwright.swatch.sheet;

import org.panwright.colour.Light;
import org.panwright.swatch.picture.Zone;

/**
 * A neutral card beside the swatches, by which the paper's own colour is found instead of taken
 * from the kit.
 *
 * @param zone where it lies, in the unit of the sheet
 * @param lightness its L*, above 0 and below 100: about 96 for a white card, 49.5 for a grey one
 *     that turns back 18 %
 */
public record Card(Zone zone, double lightness) {
  /** A grey card turns back 18 % of the light: common practice. */
  public static final double GREY = 0.18;

  /** A white card turns back about 90 %: common practice. */
  public static final double WHITE = 0.9;

  public Card {
    if (!(lightness > 0 && lightness < 100)) {
      throw new IllegalArgumentException("L* of a card lies in 0..100, was " + lightness);
    }
  }

  /** L* of a neutral card by the share of light it turns back (CIE 15): 49.5 for 0.18. */
  public static double lightnessOf(double reflectance) {
    return Light.D65.white().times(reflectance).toLab(Light.D65.white()).l();
  }
}
