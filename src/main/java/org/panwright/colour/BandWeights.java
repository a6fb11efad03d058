package org.panwright.colour;

/** Weights that turn 36 band values into tristimulus values, from tables at 5 nm. */
final class BandWeights {
  private BandWeights() {}

  /**
   * Three rows of 36 weights for X, Y and Z.
   *
   * <p>The reflectance between two band centres is taken as the straight line between them, and
   * outside 380–730 nm as the value of the nearest band, so the energy outside the bands is folded
   * into the end weights. Each 5 nm row of the tables is shared out to its bands by that rule:
   *
   * <pre>
   * w(band) = k Σ power(λ) · observer(λ) · share(band, λ),   k = 1 / Σ power(λ) · ȳ(λ)
   * </pre>
   */
  static double[][] of(StandardTable power, StandardTable observer) {
    double[][] weights = new double[3][Bands.COUNT];
    double luminance = 0;
    for (int row = 0; row < observer.rows(); row++) {
      double wavelengthNm = observer.wavelengthNm(row);
      double energy = power.valueAt(wavelengthNm);
      luminance += energy * observer.value(row, 1);
      double position = (wavelengthNm - Bands.FIRST_NM) / Bands.STEP_NM;
      double within = Math.min(Bands.COUNT - 1.0, Math.max(0, position));
      int lower = Math.min(Bands.COUNT - 2, (int) within);
      double upperShare = within - lower;
      for (int i = 0; i < 3; i++) {
        double stimulus = energy * observer.value(row, i);
        weights[i][lower] += stimulus * (1 - upperShare);
        weights[i][lower + 1] += stimulus * upperShare;
      }
    }
    for (double[] row : weights) {
      for (int band = 0; band < Bands.COUNT; band++) {
        row[band] /= luminance;
      }
    }
    return weights;
  }
}
