package org.panwright.swatch.sheet;

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
  public Card {
    if (!(lightness > 0 && lightness < 100)) {
      throw new IllegalArgumentException("L* of a card lies in 0..100, was " + lightness);
    }
  }
}
