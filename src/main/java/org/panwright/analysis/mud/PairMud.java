package org.panwright.analysis.mud;

import org.panwright.mixing.Ratio;

/**
 * What mixing two paints does to chroma.
 *
 * @param firstPaintId the paint of the grid's row
 * @param secondPaintId the paint of its column
 * @param loss mean share of chroma lost over the grid's ratios, 0..1
 * @param greyest the ratio whose chroma is lowest
 * @param greyestChroma CIELAB C* there
 * @param greyestL L* there
 */
public record PairMud(
    String firstPaintId,
    String secondPaintId,
    double loss,
    Ratio greyest,
    double greyestChroma,
    double greyestL) {
  /** Below this CIELAB chroma a mix is a useful grey or dark, not mud. */
  public static final double GREY_BELOW = 8;

  /** Whether the two neutralise each other: a useful grey or dark. */
  public boolean isGrey() {
    return greyestChroma < GREY_BELOW;
  }
}
