package org.panwright.colour;

import java.util.Arrays;

/**
 * A viewing light with the CIE 1931 2° observer: turns reflectance into tristimulus values.
 *
 * <p>D65 is the light of every figure on screen, D50 that of printed previews. Constants hold only
 * figures of the standards, read once from the resources of this package.
 */
public enum Light {
  /** CIE standard illuminant D65, average daylight. */
  D65("light-d65.csv"),
  /** CIE illuminant D50, the light of the graphic trade. */
  D50("light-d50.csv");

  private final double[][] weights;
  private final Xyz white;

  Light(String powerResource) {
    weights = BandWeights.of(StandardTable.read(powerResource), StandardTable.observer());
    white = new Xyz(sum(weights[0]), sum(weights[1]), sum(weights[2]));
  }

  /**
   * The tristimulus values of a surface with the given reflectance under this light.
   *
   * <pre>X = Σ wx(band) R(band), likewise Y and Z; Σ wy = 1</pre>
   */
  public Xyz xyz(Spectrum reflectance) {
    double[] sums = new double[3];
    for (int band = 0; band < Bands.COUNT; band++) {
      double r = reflectance.at(band);
      for (int i = 0; i < 3; i++) {
        sums[i] += weights[i][band] * r;
      }
    }
    return new Xyz(sums[0], sums[1], sums[2]);
  }

  /** CIELAB of a surface with the given reflectance, against this light's own white. */
  public Lab lab(Spectrum reflectance) {
    return Lab.of(xyz(reflectance), white);
  }

  /** The tristimulus values of the perfect white diffuser; Y = 1. */
  public Xyz white() {
    return white;
  }

  /**
   * A fresh copy of the weights of the bands for X (0), Y (1) or Z (2), for loops that cannot
   * afford a call for each spectrum.
   */
  public double[] weights(int coordinate) {
    return weights[coordinate].clone();
  }

  private static double sum(double[] values) {
    return Arrays.stream(values).sum();
  }
}
