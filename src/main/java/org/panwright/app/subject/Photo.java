package org.panwright.app.subject;

import java.util.ArrayList;
import java.util.List;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Srgb;

/** A photo as it is shown: sRGB, upright, thinned out. */
final class Photo {
  /** About how many pixels clusters are made of. */
  private static final int SAMPLED = 40_000;

  private final String name;
  private final int width;
  private final int[] rgb;

  /**
   * @param name of its file, without folder
   * @param width in pixels, 1 or more
   * @param rgb opaque pixels row by row; kept, not copied
   */
  Photo(String name, int width, int[] rgb) {
    if (width < 1 || rgb.length == 0 || rgb.length % width != 0) {
      throw new IllegalArgumentException(rgb.length + " pixels make no rows of " + width);
    }
    this.name = name;
    this.width = width;
    this.rgb = rgb;
  }

  /** The name of its file, without folder. */
  String name() {
    return name;
  }

  /** Pixels in a row. */
  int width() {
    return width;
  }

  /** Opaque pixels row by row, not to be changed. */
  int[] rgb() {
    return rgb;
  }

  /** Rows. */
  int height() {
    return rgb.length / width;
  }

  /** The colour about a pixel: the mean of the square of {@code 2 reach + 1} pixels around it. */
  Lab around(int x, int y, int reach) {
    double l = 0;
    double a = 0;
    double b = 0;
    int count = 0;
    for (int row = Math.max(0, y - reach); row <= Math.min(height() - 1, y + reach); row++) {
      for (int column = Math.max(0, x - reach);
          column <= Math.min(width - 1, x + reach);
          column++) {
        Oklab colour = oklab(rgb[row * width + column]);
        l += colour.l();
        a += colour.a();
        b += colour.b();
        count++;
      }
    }
    return lab(new Oklab(l / count, a / count, b / count));
  }

  /** Pixels on an even raster, about 40 000 at most. */
  List<Oklab> sample() {
    int step = Math.max(1, (int) Math.ceil(Math.sqrt((double) rgb.length / SAMPLED)));
    List<Oklab> colours = new ArrayList<>();
    for (int y = step / 2; y < height(); y += step) {
      for (int x = step / 2; x < width; x += step) {
        colours.add(oklab(rgb[y * width + x]));
      }
    }
    return colours.isEmpty() ? List.of(oklab(rgb[0])) : colours;
  }

  static Lab lab(Oklab oklab) {
    return Lab.of(oklab.toXyzD65(), Light.D65.white());
  }

  private static Oklab oklab(int rgb) {
    return Oklab.ofD65(Srgb.ofBytes(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255).toXyzD65());
  }
}
