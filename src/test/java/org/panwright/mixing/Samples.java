package org.panwright.mixing;

import java.util.List;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paper;

/** Made-up optics with the look of common paints; no paint was measured for them. */
final class Samples {
  static final Optics YELLOW =
      optics(nm -> 6 / (1 + Math.exp((nm - 505) / 9)) + 0.01, nm -> 0.4 * 550 / nm, 6);
  static final Optics RED = optics(nm -> 7 / (1 + Math.exp((nm - 590) / 10)) + 0.02, nm -> 0.2, 9);
  static final Optics BLUE = optics(nm -> 8 * bell(nm, 610, 70) + 0.03, nm -> 0.03 * 550 / nm, 4);
  static final Optics WHITE = optics(nm -> 0.002, nm -> 6, 5);
  static final Optics BLACK = optics(nm -> 9, nm -> 0.02, 3);

  static final OpticsTable TABLE =
      OpticsTable.of(
          List.of("yellow", "red", "blue", "white", "black"),
          List.of(YELLOW, RED, BLUE, WHITE, BLACK),
          Paper.WHITE);

  private Samples() {}

  static Optics optics(
      java.util.function.DoubleUnaryOperator absorption,
      java.util.function.DoubleUnaryOperator scattering,
      double expectedError) {
    return new Optics(
        Spectrum.ofWavelengths(absorption),
        Spectrum.ofWavelengths(scattering),
        OpticsSource.SPECTRA,
        expectedError);
  }

  /** The same paint with {@code factor} times the pigment in it. */
  static Optics stronger(Optics optics, double factor) {
    return new Optics(
        optics.absorption().map(k -> k * factor),
        optics.scattering().map(s -> s * factor),
        optics.source(),
        optics.expectedError());
  }

  private static double bell(double nm, double centre, double width) {
    double u = (nm - centre) / width;
    return Math.exp(-u * u);
  }
}
