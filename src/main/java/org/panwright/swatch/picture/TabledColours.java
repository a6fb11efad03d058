package org.panwright.swatch.picture;

import java.awt.color.ColorSpace;
import org.panwright.colour.Adaptation;
import org.panwright.colour.Light;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Xyz;

/**
 * Colours of a profile that is more than curves and a matrix, looked up once in a cube of nodes.
 */
final class TabledColours implements FileColours {
  private static final int NODES = 33;

  private final float[][] nodes = new float[NODES * NODES * NODES][3];

  TabledColours(ColorSpace space) {
    for (int r = 0; r < NODES; r++) {
      for (int g = 0; g < NODES; g++) {
        for (int b = 0; b < NODES; b++) {
          float[] encoded = {share(r), share(g), share(b)};
          LinearSrgb linear = ofPcs(space.toCIEXYZ(encoded));
          nodes[index(r, g, b)] =
              new float[] {(float) linear.red(), (float) linear.green(), (float) linear.blue()};
        }
      }
    }
  }

  /** From the profile connection space, whose white is D50. */
  static LinearSrgb ofPcs(float[] xyz) {
    return LinearSrgb.ofXyzD65(
        Adaptation.adapt(new Xyz(xyz[0], xyz[1], xyz[2]), Light.D50.white(), Light.D65.white()));
  }

  @Override
  public LinearSrgb linear(double red, double green, double blue) {
    double[] sum = new double[3];
    for (int corner = 0; corner < 8; corner++) {
      double weight = 1;
      int[] at = new int[3];
      double[] encoded = {red, green, blue};
      for (int c = 0; c < 3; c++) {
        double place = encoded[c] * (NODES - 1);
        int below = Math.min(NODES - 2, (int) place);
        int up = (corner >> c) & 1;
        at[c] = below + up;
        weight *= up == 1 ? place - below : 1 - (place - below);
      }
      float[] node = nodes[index(at[0], at[1], at[2])];
      for (int c = 0; c < 3; c++) {
        sum[c] += weight * node[c];
      }
    }
    return new LinearSrgb(sum[0], sum[1], sum[2]);
  }

  private static float share(int node) {
    return (float) node / (NODES - 1);
  }

  private static int index(int r, int g, int b) {
    return (r * NODES + g) * NODES + b;
  }
}
