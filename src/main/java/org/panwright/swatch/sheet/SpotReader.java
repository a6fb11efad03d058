package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.LinearSrgb;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;

/**
 * Reads the colour of places in a picture.
 *
 * <p>A place is sampled on a net of pixels. Pixels whose luminance lies more than {@value #FAR}
 * robust standard deviations from the median are specks, hairs and bristles and are left out; the
 * rest is averaged in linear light, since that is what the eye does with grain it cannot resolve.
 *
 * <pre>robust standard deviation = 1.4826 · median |Y − median Y|</pre>
 */
final class SpotReader {
  private static final int ACROSS = 48;
  private static final int TILES = 3;
  private static final int FEWEST = 12;
  private static final double FAR = 4;
  private static final double NORMAL = 1.4826;
  private static final double TOP = 254.5 / 255;
  private static final double BOTTOM = 1.5 / 255;

  private final Picture picture;
  private final Homography place;

  SpotReader(Picture picture, Homography place) {
    this.picture = picture;
    this.place = place;
  }

  /** The colour of a zone; empty if it lies outside the picture or on too few pixels. */
  Optional<SpotColour> read(Zone zone) {
    double scale = place.scaleAt(zone.middle());
    int columns = count(zone.width() * scale);
    int rows = count(zone.height() * scale);
    if (columns * rows < FEWEST) {
      return Optional.empty();
    }
    Net net = new Net(columns, rows);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Point p = place.map(zone.at((column + 0.5) / columns, (row + 0.5) / rows));
        if (!picture.holds(p.x(), p.y())) {
          return Optional.empty();
        }
        net.set(picture, row * columns + column, (int) p.x(), (int) p.y());
      }
    }
    return Optional.of(net.spot(zone.middle()));
  }

  private static int count(double pixels) {
    return (int) Math.max(0, Math.min(ACROSS, Math.floor(pixels)));
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** The samples of one zone. */
  private static final class Net {
    final int columns;
    final int rows;
    final LinearSrgb[] colours;
    final double[] luminance;
    int full;
    int empty;

    Net(int columns, int rows) {
      this.columns = columns;
      this.rows = rows;
      colours = new LinearSrgb[columns * rows];
      luminance = new double[columns * rows];
    }

    void set(Picture picture, int index, int x, int y) {
      colours[index] = picture.linear(x, y);
      luminance[index] = colours[index].toXyzD65().y();
      double high = 0;
      double low = 1;
      for (int c = 0; c < 3; c++) {
        high = Math.max(high, picture.encoded(x, y, c));
        low = Math.min(low, picture.encoded(x, y, c));
      }
      full += high >= TOP ? 1 : 0;
      empty += low <= BOTTOM ? 1 : 0;
    }

    SpotColour spot(Point middle) {
      double centre = median(luminance);
      double[] off = new double[luminance.length];
      Arrays.setAll(off, i -> Math.abs(luminance[i] - centre));
      double reach = FAR * Math.max(NORMAL * median(off), 1e-3 + 0.004 * Math.abs(centre));
      boolean[] kept = new boolean[off.length];
      int left = 0;
      for (int i = 0; i < off.length; i++) {
        kept[i] = off[i] <= reach;
        left += kept[i] ? 0 : 1;
      }
      double count = luminance.length;
      LinearSrgb whole = mean(kept, 0, rows, 0, columns).orElseThrow();
      return new SpotColour(
          middle,
          whole,
          tiles(kept),
          grain(centre),
          full / count,
          empty / count,
          left / count,
          luminance.length);
    }

    private List<LinearSrgb> tiles(boolean[] kept) {
      List<LinearSrgb> tiles = new ArrayList<>();
      for (int i = 0; i < TILES; i++) {
        for (int j = 0; j < TILES; j++) {
          mean(
                  kept,
                  i * rows / TILES,
                  (i + 1) * rows / TILES,
                  j * columns / TILES,
                  (j + 1) * columns / TILES)
              .ifPresent(tiles::add);
        }
      }
      return tiles;
    }

    private Optional<LinearSrgb> mean(
        boolean[] kept, int fromRow, int toRow, int fromColumn, int toColumn) {
      double red = 0;
      double green = 0;
      double blue = 0;
      int count = 0;
      for (int row = fromRow; row < toRow; row++) {
        for (int column = fromColumn; column < toColumn; column++) {
          int i = row * columns + column;
          if (kept[i]) {
            red += colours[i].red();
            green += colours[i].green();
            blue += colours[i].blue();
            count++;
          }
        }
      }
      return count == 0
          ? Optional.empty()
          : Optional.of(new LinearSrgb(red / count, green / count, blue / count));
    }

    /** Differences of independent neighbours have √2 times the deviation of one. */
    private double grain(double centre) {
      double[] steps = new double[rows * Math.max(1, columns - 1)];
      for (int row = 0; row < rows; row++) {
        for (int column = 0; column + 1 < columns; column++) {
          int i = row * columns + column;
          steps[row * (columns - 1) + column] = Math.abs(luminance[i + 1] - luminance[i]);
        }
      }
      return NORMAL * median(steps) / Math.sqrt(2) / Math.max(1e-3, centre);
    }
  }
}
