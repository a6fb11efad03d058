package org.panwright.swatch.picture;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Srgb;

/**
 * Colours of three curves and a matrix: sRGB itself, and most embedded profiles (ICC.1:2022,
 * section 8.3.3, "three-component matrix-based").
 *
 * <pre>(R, G, B) linear sRGB = M (curve(r), curve(g), curve(b))</pre>
 */
final class CurvedColours implements FileColours {
  /** sRGB as IEC 61966-2-1 has it; what a picture without a profile is taken for. */
  static final CurvedColours SRGB =
      new CurvedColours(
          new DoubleUnaryOperator[] {Srgb::decode, Srgb::decode, Srgb::decode},
          new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}});

  private static final int STEPS = 4096;

  private final double[][] curves = new double[3][STEPS + 2];
  private final double[][] matrix = new double[3][];

  CurvedColours(DoubleUnaryOperator[] curves, double[][] matrix) {
    for (int c = 0; c < 3; c++) {
      DoubleUnaryOperator curve = curves[c];
      Arrays.setAll(this.curves[c], i -> curve.applyAsDouble(Math.min(1, (double) i / STEPS)));
      this.matrix[c] = matrix[c].clone();
    }
  }

  @Override
  public LinearSrgb linear(double red, double green, double blue) {
    double r = curved(0, red);
    double g = curved(1, green);
    double b = curved(2, blue);
    return new LinearSrgb(row(0, r, g, b), row(1, r, g, b), row(2, r, g, b));
  }

  private double row(int row, double r, double g, double b) {
    return matrix[row][0] * r + matrix[row][1] * g + matrix[row][2] * b;
  }

  private double curved(int channel, double encoded) {
    double at = encoded * STEPS;
    int below = (int) at;
    double part = at - below;
    return curves[channel][below] * (1 - part) + curves[channel][below + 1] * part;
  }
}
