package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/** Reads rows of printed squares: black or white is decided between the darkest and lightest. */
final class CodeReader {
  private static final double LEAST_CONTRAST = 0.15;
  private static final double UNCLEAR = 0.1;
  private static final int SAMPLES = 5;

  private CodeReader() {}

  /**
   * The squares as read, true for black; empty if they do not stand out or lie outside.
   *
   * @param mostUnclear how many may lie in the middle fifth between black and white
   */
  static Optional<List<Boolean>> squares(
      Picture picture, Homography place, List<Zone> cells, int mostUnclear) {
    double[] levels = new double[cells.size()];
    for (int i = 0; i < levels.length; i++) {
      levels[i] = level(picture, place, cells.get(i));
    }
    double low = Arrays.stream(levels).min().orElseThrow();
    double high = Arrays.stream(levels).max().orElseThrow();
    if (!(high - low >= LEAST_CONTRAST)) {
      return Optional.empty();
    }
    double middle = (low + high) / 2;
    double unclear =
        Arrays.stream(levels).filter(at -> Math.abs(at - middle) < UNCLEAR * (high - low)).count();
    if (unclear > mostUnclear) {
      return Optional.empty();
    }
    List<Boolean> squares = new ArrayList<>();
    for (double level : levels) {
      squares.add(level < middle);
    }
    return Optional.of(squares);
  }

  /** The mean lightness of the middle of a cell; NaN outside the picture. */
  private static double level(Picture picture, Homography place, Zone cell) {
    double sum = 0;
    for (int i = 0; i < SAMPLES; i++) {
      for (int j = 0; j < SAMPLES; j++) {
        double across = 0.3 + 0.4 * i / (SAMPLES - 1);
        double down = 0.3 + 0.4 * j / (SAMPLES - 1);
        Point p = place.map(cell.at(across, down));
        if (!picture.holds(p.x(), p.y())) {
          return Double.NaN;
        }
        sum += picture.lightness((int) p.x(), (int) p.y());
      }
    }
    return sum / (SAMPLES * SAMPLES);
  }
}
