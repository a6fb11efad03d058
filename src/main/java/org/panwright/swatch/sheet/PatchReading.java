package org.panwright.swatch.sheet;

import org.panwright.colour.Lab;

/**
 * The colour of one painted place, corrected by the bare paper around it.
 *
 * @param lab under D65, as on the paper of the kit
 * @param held whether its lightness lay beyond what a coat can have
 * @param spread how uneven it is: the mean CIEDE2000 of its ninths from the whole
 * @param full the share of its pixels at the top of the scale of a channel
 * @param empty the share of its pixels at the bottom of the scale of a channel
 * @param leftOut the share of its pixels left out as specks
 * @param pixels how many were looked at
 */
public record PatchReading(
    Lab lab,
    HeldLightness held,
    double spread,
    double full,
    double empty,
    double leftOut,
    int pixels) {
  private static final double BEYOND = 0.5;

  /**
   * Whether the picture cannot hold the colour: in more than half of the pixels a channel lies at
   * the end of its scale. What was read is then paler than the paint.
   */
  public boolean isBeyondPicture() {
    return full > BEYOND || empty > BEYOND;
  }
}
