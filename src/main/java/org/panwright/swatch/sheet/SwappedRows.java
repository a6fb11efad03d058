package org.panwright.swatch.sheet;

import java.util.Optional;

/**
 * Two rows whose colours fit each other's paint far better than their own.
 *
 * @param first the place of one in the list of rows
 * @param second the place of the other
 * @param before the mean CIEDE2000 of the two as labelled
 * @param after the same once exchanged
 */
public record SwappedRows(int first, int second, double before, double after) {
  private static final double CLEAR_GAIN = 8;
  private static final double CLEAR_SHARE = 0.6;

  /**
   * The clearest exchange, if one is clear: it brings the two at least {@value #CLEAR_GAIN} nearer
   * on average and below {@value #CLEAR_SHARE} of what they were.
   *
   * @param distance how far row i, as read, is from what the paint of row j is expected to look
   *     like
   */
  static Optional<SwappedRows> in(double[][] distance) {
    Optional<SwappedRows> best = Optional.empty();
    for (int i = 0; i < distance.length; i++) {
      for (int j = i + 1; j < distance.length; j++) {
        double before = (distance[i][i] + distance[j][j]) / 2;
        double after = (distance[i][j] + distance[j][i]) / 2;
        boolean clear = before - after > CLEAR_GAIN && after < CLEAR_SHARE * before;
        if (clear && best.map(b -> before - after > b.before() - b.after()).orElse(true)) {
          best = Optional.of(new SwappedRows(i, j, before, after));
        }
      }
    }
    return best;
  }
}
