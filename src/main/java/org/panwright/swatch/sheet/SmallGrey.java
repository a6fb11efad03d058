package org.panwright.swatch.sheet;

import org.panwright.swatch.picture.Picture;

/**
 * A picture made small and grey for finding things: means over squares of pixels, and which of them
 * are darker than their surroundings.
 *
 * <p>The surroundings are a window around each place, whose mean comes from a table of sums (F. C.
 * Crow, Computer Graphics 18, 1984); dark is what lies clearly below it, so that shade does not
 * matter (D. Bradley and G. Roth, Journal of Graphics Tools 12, 2007).
 */
final class SmallGrey {
  private static final int LONGEST = 1600;
  private static final double WINDOW = 1.0 / 10;
  private static final double DARK = 0.72;

  final int width;
  final int height;

  /** Pixels of the picture along a side of one pixel here. */
  final int step;

  private final float[] grey;
  private final boolean[] dark;

  SmallGrey(Picture picture) {
    int longest = Math.max(picture.width(), picture.height());
    step = Math.max(1, (longest + LONGEST - 1) / LONGEST);
    width = Math.max(1, picture.width() / step);
    height = Math.max(1, picture.height() / step);
    grey = means(picture);
    dark = darker();
  }

  boolean isDark(int index) {
    return dark[index];
  }

  private float[] means(Picture picture) {
    float[] means = new float[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double sum = 0;
        for (int dy = 0; dy < step; dy++) {
          for (int dx = 0; dx < step; dx++) {
            sum += picture.lightness(x * step + dx, y * step + dy);
          }
        }
        means[y * width + x] = (float) (sum / (step * step));
      }
    }
    return means;
  }

  private boolean[] darker() {
    double[] sums = new double[(width + 1) * (height + 1)];
    for (int y = 0; y < height; y++) {
      double row = 0;
      for (int x = 0; x < width; x++) {
        row += grey[y * width + x];
        sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
      }
    }
    int reach = Math.max(4, (int) (Math.max(width, height) * WINDOW / 2));
    boolean[] found = new boolean[grey.length];
    for (int y = 0; y < height; y++) {
      int top = Math.max(0, y - reach);
      int bottom = Math.min(height, y + reach + 1);
      for (int x = 0; x < width; x++) {
        int left = Math.max(0, x - reach);
        int right = Math.min(width, x + reach + 1);
        double sum =
            sums[bottom * (width + 1) + right]
                - sums[top * (width + 1) + right]
                - sums[bottom * (width + 1) + left]
                + sums[top * (width + 1) + left];
        double mean = sum / ((bottom - top) * (right - left));
        found[y * width + x] = grey[y * width + x] < DARK * mean;
      }
    }
    return found;
  }
}
