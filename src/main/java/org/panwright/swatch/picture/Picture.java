package org.panwright.swatch.picture;

import org.panwright.colour.LinearSrgb;

/**
 * A photo or scan in memory, upright, in samples as the file encodes them.
 *
 * <p>Large pictures hold every second, third … pixel of the file: the colour of a patch is taken
 * from thousands of pixels, so leaving some out costs nothing, and memory stays bounded. Immutable.
 */
public final class Picture {
  private static final double FULL = 65535;

  /** Three of 255 steps. */
  private static final int ROUNDED = 3 * 257;

  private final int width;
  private final int height;
  private final short[] samples;
  private final FileColours colours;
  private final int step;
  private final int quality;
  private final double transparent;

  /**
   * @param samples red, green, blue of each pixel row by row, 0..65535; kept, not copied
   * @param step how many pixels of the file one pixel here stands for along a side
   * @param quality of a JPEG, 1..100; 100 otherwise
   * @param transparent the share of pixels that were not opaque; white lies beneath them
   */
  Picture(
      int width,
      int height,
      short[] samples,
      FileColours colours,
      int step,
      int quality,
      double transparent) {
    if (width < 1 || height < 1 || samples.length != 3L * width * height) {
      throw new IllegalArgumentException(
          "%d samples do not make %d x %d pixels".formatted(samples.length, width, height));
    }
    this.width = width;
    this.height = height;
    this.samples = samples;
    this.colours = colours;
    this.step = step;
    this.quality = quality;
    this.transparent = transparent;
  }

  /** Pixels from left to right. */
  public int width() {
    return width;
  }

  /** Pixels from top to bottom. */
  public int height() {
    return height;
  }

  /** How many pixels of the file one pixel here stands for along a side. */
  public int step() {
    return step;
  }

  /** The JPEG quality, 1..100; 100 for other files. */
  public int quality() {
    return quality;
  }

  /** The share of pixels that were not opaque, 0..1; white lies beneath them. */
  public double transparent() {
    return transparent;
  }

  /** Whether red, green and blue differ nowhere by more than rounding: grey saved as colours. */
  public boolean isGrey() {
    for (int at = 0; at < samples.length; at += 3) {
      int red = samples[at] & 0xffff;
      int green = samples[at + 1] & 0xffff;
      int blue = samples[at + 2] & 0xffff;
      if (Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)) > ROUNDED) {
        return false;
      }
    }
    return true;
  }

  /** Whether a place lies on a pixel. */
  public boolean holds(double x, double y) {
    return x >= 0 && y >= 0 && x < width && y < height;
  }

  /** One sample as encoded, 0..1. */
  public double encoded(int x, int y, int channel) {
    return (samples[3 * (y * width + x) + channel] & 0xffff) / FULL;
  }

  /** The colour of a pixel. */
  public LinearSrgb linear(int x, int y) {
    int at = 3 * (y * width + x);
    return colours.linear(
        (samples[at] & 0xffff) / FULL,
        (samples[at + 1] & 0xffff) / FULL,
        (samples[at + 2] & 0xffff) / FULL);
  }

  /** How light a pixel is as encoded, 0..1: the mean of its samples. */
  public double lightness(int x, int y) {
    int at = 3 * (y * width + x);
    return ((samples[at] & 0xffff) + (samples[at + 1] & 0xffff) + (samples[at + 2] & 0xffff))
        / (3 * FULL);
  }
}
