package org.panwright.swatch.sheet;

import org.panwright.colour.LinearSrgb;
import org.panwright.swatch.picture.Point;

/**
 * What a place in a picture looks like, specks left out.
 *
 * @param middle where it lies, in the unit of the sheet
 * @param colour the mean over what is left, light-linear, not yet corrected by the paper
 * @param tiles the same for parts of the place, to tell how even it is
 * @param grain how far neighbouring pixels differ: the robust standard deviation of lightness over
 *     its mean, from differences of neighbours
 * @param full the share of pixels with a sample at the top of its scale
 * @param empty the share of pixels with a sample at the bottom of its scale
 * @param leftOut the share of pixels left out as specks
 * @param pixels how many were looked at
 */
record SpotColour(
    Point middle,
    LinearSrgb colour,
    java.util.List<LinearSrgb> tiles,
    double grain,
    double full,
    double empty,
    double leftOut,
    int pixels) {
  SpotColour {
    tiles = java.util.List.copyOf(tiles);
  }

  /** Its lightness in linear light: the luminance. */
  double luminance() {
    return colour.toXyzD65().y();
  }
}
