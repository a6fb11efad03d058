package org.panwright.colour;

/**
 * Linear Bradford adaptation between whites (ICC.1:2022, annex E).
 *
 * <p>Used to show on a D65 screen what a sheet will look like under a D50 print light.
 */
public final class Adaptation {
  private static final double[][] BRADFORD = {
    {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
  };

  /** The inverse of the matrix above, so that there and back is the same to 15 digits. */
  private static final double[][] INVERSE = {
    {0.9869929054667123, -0.1470542564209901, 0.1599626516637312},
    {0.4323052697233946, 0.5183602715367776, 0.0492912282128556},
    {-0.0085286645751773, 0.0400428216540849, 0.9684866957875502}
  };

  private Adaptation() {}

  /** The colour that looks under {@code to} as {@code colour} does under {@code from}. */
  public static Xyz adapt(Xyz colour, Xyz from, Xyz to) {
    double[] cone = times(BRADFORD, colour);
    double[] source = times(BRADFORD, from);
    double[] target = times(BRADFORD, to);
    double[] adapted =
        times(
            INVERSE,
            new Xyz(
                cone[0] * target[0] / source[0],
                cone[1] * target[1] / source[1],
                cone[2] * target[2] / source[2]));
    return new Xyz(adapted[0], adapted[1], adapted[2]);
  }

  private static double[] times(double[][] matrix, Xyz v) {
    double[] product = new double[3];
    for (int row = 0; row < 3; row++) {
      product[row] = matrix[row][0] * v.x() + matrix[row][1] * v.y() + matrix[row][2] * v.z();
    }
    return product;
  }
}
