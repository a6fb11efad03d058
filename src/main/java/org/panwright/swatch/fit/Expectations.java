package org.panwright.swatch.fit;

import org.panwright.colour.Bands;
import org.panwright.swatch.squares.Equations;

/**
 * What is expected of optics before any swatch is read: K and S run smoothly over wavelength, S is
 * that of a usual coat unless the swatches speak, the face is that of a matt coat. Where the {@link
 * KnownShapes} of a paint are given, its curves are expected to bend as those do, and they take the
 * place of the usual S.
 *
 * <pre>
 * Σ bendK (Δ² ln K)² + Σ bendS (Δ² ln S)² + Σ pull (ln S − usual)²
 *   + u² + ((k2 − 0.6) / 0.02)² + ((gloss − 0.1) / 0.5)²
 * </pre>
 *
 * <p>k2 = 0.596 is what theory gives for diffuse light inside a film of index 1.5 (J. L.
 * Saunderson, Journal of the Optical Society of America 32, 1942, page 727).
 */
final class Expectations {
  static final double K2 = 0.6;
  static final double GLOSS = 0.1;
  private static final double K2_SPREAD = 0.02;
  private static final double GLOSS_SPREAD = 0.5;
  private static final double USUAL_SPREAD = 2;
  private static final double[] FIRST_DIFFERENCE = {-1, 1};
  private static final double[] SECOND_DIFFERENCE = {1, -2, 1};
  private static final double[] ITSELF = {1};

  private final FitSettings settings;
  private final KnownShapes known;

  Expectations(FitSettings settings, KnownShapes known) {
    this.settings = settings;
    this.known = known;
  }

  /** Adds all of them to the equations and answers the sum of their squares. */
  double addTo(Equations equations, Unknowns unknowns) {
    double squares =
        near(equations, unknowns, unknowns.usual(), 0, 1 / (USUAL_SPREAD * USUAL_SPREAD));
    for (int paint = 0; paint < unknowns.paints(); paint++) {
      squares += curves(equations, unknowns, paint);
      if (!known.knows(paint)) {
        squares += pull(equations, unknowns, paint);
      }
    }
    if (settings.face().isPresent()) {
      for (int unknown = unknowns.face(); unknown < unknowns.usual(); unknown++) {
        equations.addToDiagonal(unknown, 1);
      }
      return squares;
    }
    return squares
        + near(equations, unknowns, unknowns.face(), 0, 1)
        + near(equations, unknowns, unknowns.inner(), K2, 1 / (K2_SPREAD * K2_SPREAD))
        + near(equations, unknowns, unknowns.gloss(), GLOSS, 1 / (GLOSS_SPREAD * GLOSS_SPREAD));
  }

  private double curves(Equations equations, Unknowns unknowns, int paint) {
    double squares = 0;
    for (int band = 0; band < Bands.COUNT; band++) {
      int scattering = unknowns.scattering(paint, band);
      if (band + 1 < Bands.COUNT) {
        double expected = known.scattering(paint, band + 1) - known.scattering(paint, band);
        squares += slope(equations, unknowns, scattering, expected);
      }
      if (band + 2 < Bands.COUNT) {
        int absorption = unknowns.absorption(paint, band);
        double usualK =
            known.absorption(paint, band)
                - 2 * known.absorption(paint, band + 1)
                + known.absorption(paint, band + 2);
        squares += bend(equations, unknowns, absorption, usualK, settings.absorptionBend());
        squares += bend(equations, unknowns, scattering, 0, settings.scatteringBend());
      }
    }
    return squares;
  }

  private double slope(Equations equations, Unknowns unknowns, int first, double expected) {
    double step = unknowns.at(first + 1) - unknowns.at(first) - expected;
    equations.add(new int[] {first, first + 1}, FIRST_DIFFERENCE, step, settings.scatteringSlope());
    return settings.scatteringSlope() * step * step;
  }

  /** pull · spread² · ln(1 + d² / spread²), d = mean ln S of the paint − usual. */
  private double pull(Equations equations, Unknowns unknowns, int paint) {
    int[] columns = new int[Bands.COUNT + 1];
    double[] slopes = new double[Bands.COUNT + 1];
    double off = -unknowns.at(unknowns.usual());
    for (int band = 0; band < Bands.COUNT; band++) {
      columns[band] = unknowns.scattering(paint, band);
      slopes[band] = 1.0 / Bands.COUNT;
      off += unknowns.at(columns[band]) / Bands.COUNT;
    }
    columns[Bands.COUNT] = unknowns.usual();
    slopes[Bands.COUNT] = -1;
    double spread = settings.scatteringSpread() * settings.scatteringSpread();
    double give = 1 + off * off / spread;
    equations.add(columns, slopes, off, settings.scatteringPull() / give);
    return settings.scatteringPull() * spread * Math.log(give);
  }

  private static double bend(
      Equations equations, Unknowns unknowns, int first, double expected, double weight) {
    double bend =
        unknowns.at(first) - 2 * unknowns.at(first + 1) + unknowns.at(first + 2) - expected;
    equations.add(new int[] {first, first + 1, first + 2}, SECOND_DIFFERENCE, bend, weight);
    return weight * bend * bend;
  }

  private static double near(
      Equations equations, Unknowns unknowns, int unknown, double expected, double weight) {
    double off = unknowns.at(unknown) - expected;
    equations.add(new int[] {unknown}, ITSELF, off, weight);
    return weight * off * off;
  }
}
