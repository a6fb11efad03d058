package org.panwright.swatch.fit;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.panwright.colour.Spectrum;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.squares.Equations;

/**
 * How far to trust fitted optics: the CIEDE2000 error to expect of coats predicted from them.
 *
 * <pre>
 * E² = r² (1 + 1.5v),   r² = max(1, Σ residual² / max(1, coats − 1))
 * v = mean over a strong coat and a wash on paper and a middle coat on grey of jᵀ A⁻¹ j
 * </pre>
 *
 * <p>Where the pigments are known, E is no more than what their names alone make one expect, unless
 * the coats disagree by more.
 *
 * <p>r is what the coats themselves disagree by, at least the difference of two coats painted
 * alike. A are the normal equations at the solution: v tells how much the coats, and what was known
 * before, leave open. One swatch leaves more open than four.
 */
final class FitDoubt {
  private static final double LEAST_ERROR = 1;
  private static final double MOST_ERROR = 30;

  /** Calibrated on invented and measured coats left out: docs/decisions/0080. */
  private static final double OPENNESS = 1.5;

  private static final double STRONG = 2;
  private static final double MIDDLE = 1;
  private static final double WASH = 0.3;
  private static final Reading GREY = new Reading.OfSpectrum(Spectrum.flat(0.3));

  private final Optional<Equations.Uncertainty> uncertainty;
  private final Probes probes;
  private final Reading paper;
  private final Predicate<String> named;

  /** Coats that were never painted, of one paint. */
  interface Probes {
    /** The coat of a paint at some times the usual load over a ground. */
    Probe of(String paint, double load, Reading ground);
  }

  /** One such coat. */
  interface Probe {
    /** The mean squared CIEDE2000 the fit leaves open for it. */
    double variance(Equations.Uncertainty uncertainty);
  }

  /**
   * @param uncertainty at the solution; empty if the equations have none
   * @param paper beneath the coats on paper
   * @param named whether the pigments of a paint are known
   */
  FitDoubt(
      Optional<Equations.Uncertainty> uncertainty,
      Probes probes,
      Reading paper,
      Predicate<String> named) {
    this.named = named;
    this.uncertainty = uncertainty;
    this.probes = probes;
    this.paper = paper;
  }

  /** The error to expect of a paint's coats. */
  double expectedError(String paint, List<SwatchResidual> residuals) {
    double squares = 0;
    int coats = 0;
    for (SwatchResidual residual : residuals) {
      if (residual.swatch().holds(paint)) {
        squares += residual.ciede2000() * residual.ciede2000();
        coats++;
      }
    }
    double disagreement = Math.max(LEAST_ERROR, squares / Math.max(1, coats - 1));
    double error = Math.sqrt(disagreement * (1 + OPENNESS * openness(paint)));
    double most =
        named.test(paint)
            ? Math.max(PigmentLibrary.EXPECTED_ERROR, Math.sqrt(disagreement))
            : MOST_ERROR;
    return Math.min(Math.min(MOST_ERROR, most), error);
  }

  private double openness(String paint) {
    if (uncertainty.isEmpty()) {
      return MOST_ERROR * MOST_ERROR;
    }
    return (probes.of(paint, STRONG, paper).variance(uncertainty.get())
            + probes.of(paint, WASH, paper).variance(uncertainty.get())
            + probes.of(paint, MIDDLE, GREY).variance(uncertainty.get()))
        / 3;
  }
}
