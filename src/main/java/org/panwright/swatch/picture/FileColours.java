package org.panwright.swatch.picture;

import org.panwright.colour.LinearSrgb;

/** What the red, green and blue of a file stand for. */
public interface FileColours {
  /**
   * The colour of encoded samples.
   *
   * @param red 0..1
   * @param green 0..1
   * @param blue 0..1
   * @return light-linear sRGB; outside 0..1 where the file holds more than sRGB can
   */
  LinearSrgb linear(double red, double green, double blue);
}
