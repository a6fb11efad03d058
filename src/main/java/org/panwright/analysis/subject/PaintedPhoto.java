package org.panwright.analysis.subject;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Oklab;
import org.panwright.colour.Srgb;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.WashStrengths;

/**
 * Shows photos as some paints could paint them: every colour becomes the nearest one they reach.
 *
 * <p>The nearest reachable colour is looked up once for each of {@value #NODES}³ sRGB colours that
 * lie evenly; what lies between them is interpolated along the three axes, so that skies stay
 * smooth. 36 000 nodes of 12 bytes: 0.4 MB, whatever the paints. Immutable; any thread.
 */
public final class PaintedPhoto {
  /** Nodes along each axis of sRGB. */
  static final int NODES = 33;

  private static final int ROWS_AT_ONCE = 16;
  private static final double STEP = 255.0 / (NODES - 1);

  private final float[] nodes;
  private final NearestColour reach;

  private PaintedPhoto(float[] nodes, NearestColour reach) {
    this.nodes = nodes;
    this.reach = reach;
  }

  /**
   * The look of photos painted with these paints of a table; with none of them, bare paper.
   *
   * @param cancelled asked now and then
   * @throws CancellationException as soon as {@code cancelled} answers true
   */
  public static PaintedPhoto with(
      OpticsTable table, List<String> paintIds, WashStrengths washes, BooleanSupplier cancelled) {
    NearestColour reach = new NearestColour(ReachCloud.of(table, paintIds, washes, cancelled));
    float[] shown = shown(reach);
    float[] nodes = new float[NODES * NODES * NODES * 3];
    int at = 0;
    for (int red = 0; red < NODES; red++) {
      requireWanted(cancelled);
      for (int green = 0; green < NODES; green++) {
        for (int blue = 0; blue < NODES; blue++) {
          Oklab node = oklab(red * STEP / 255, green * STEP / 255, blue * STEP / 255);
          int nearest = reach.nearest(node.l(), node.a(), node.b());
          System.arraycopy(shown, 3 * nearest, nodes, at, 3);
          at += 3;
        }
      }
    }
    return new PaintedPhoto(nodes, reach);
  }

  /** The reachable colours as the screen shows them, 0..255. */
  private static float[] shown(NearestColour reach) {
    float[] shown = new float[3 * reach.size()];
    for (int i = 0; i < reach.size(); i++) {
      Oklab oklab = new Oklab(reach.l(i), reach.a(i), reach.b(i));
      Srgb srgb = GamutFit.of(oklab.toOklch()).shown();
      shown[3 * i] = (float) (255 * srgb.red());
      shown[3 * i + 1] = (float) (255 * srgb.green());
      shown[3 * i + 2] = (float) (255 * srgb.blue());
    }
    return shown;
  }

  /**
   * A picture as it would be painted.
   *
   * @param rgb the pixels row by row, red, green and blue in the lower 24 bits
   * @param width pixels in a row
   * @param progress told the share done, 0..1, rising
   * @param cancelled asked every {@value #ROWS_AT_ONCE} rows
   * @return as many pixels, opaque
   * @throws CancellationException as soon as {@code cancelled} answers true
   */
  public int[] paint(int[] rgb, int width, DoubleConsumer progress, BooleanSupplier cancelled) {
    int[] painted = new int[rgb.length];
    int block = ROWS_AT_ONCE * width;
    for (int from = 0; from < rgb.length; from += block) {
      requireWanted(cancelled);
      int to = Math.min(rgb.length, from + block);
      for (int i = from; i < to; i++) {
        painted[i] = paint(rgb[i]);
      }
      progress.accept((double) to / rgb.length);
    }
    return painted;
  }

  /** One colour as it would be painted, opaque. */
  public int paint(int rgb) {
    double red = (rgb >> 16 & 255) / STEP;
    double green = (rgb >> 8 & 255) / STEP;
    double blue = (rgb & 255) / STEP;
    int r = Math.min(NODES - 2, (int) red);
    int g = Math.min(NODES - 2, (int) green);
    int b = Math.min(NODES - 2, (int) blue);
    int at = ((r * NODES + g) * NODES + b) * 3;
    double u = red - r;
    double v = green - g;
    double w = blue - b;
    return 255 << 24
        | between(at, u, v, w) << 16
        | between(at + 1, u, v, w) << 8
        | between(at + 2, u, v, w);
  }

  private int between(int at, double u, double v, double w) {
    int red = 3 * NODES * NODES;
    int green = 3 * NODES;
    double near = edge(at, v, w, green);
    double far = edge(at + red, v, w, green);
    return (int) (near + u * (far - near) + 0.5);
  }

  private double edge(int at, double v, double w, int green) {
    double low = nodes[at] + w * (nodes[at + 3] - nodes[at]);
    double high = nodes[at + green] + w * (nodes[at + green + 3] - nodes[at + green]);
    return low + v * (high - low);
  }

  /** How many different colours the reach is known by. */
  public int colours() {
    return reach.size();
  }

  static Oklab oklab(double red, double green, double blue) {
    return Oklab.ofD65(new Srgb(red, green, blue).toXyzD65());
  }

  private static void requireWanted(BooleanSupplier cancelled) {
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("the painted photo is no longer wanted");
    }
  }
}
