package org.panwright.paint;

import java.util.Objects;
import org.panwright.colour.Spectrum;

/**
 * Kubelka–Munk absorption K(λ) and scattering S(λ) of a paint per unit load, and how its gum
 * smooths the face of a coat.
 *
 * <p>Load 1 is the paint's masstone coat, so K and S are without unit. Both are 0 or more in every
 * band.
 *
 * <p>A matt face throws light back before it reaches the paint. The gum of a thick coat smooths it:
 *
 * <pre>k1(X) = k1 · exp(−gloss · X)</pre>
 *
 * <p>Example: at gloss 1 the full-strength coat, X = 1, throws back 0.37 of what bare paper does.
 *
 * @param gloss how fast the share turned back at the face falls with the load X, 0 or more; 0 for a
 *     coat as matt as paper
 * @param source where they come from
 * @param expectedError the CIEDE2000 error to expect of a coat predicted from them, above 0
 */
public record Optics(
    Spectrum absorption,
    Spectrum scattering,
    double gloss,
    OpticsSource source,
    double expectedError) {
  /** Optics of a paint that dries as matt as paper. */
  public Optics(
      Spectrum absorption, Spectrum scattering, OpticsSource source, double expectedError) {
    this(absorption, scattering, 0, source, expectedError);
  }

  public Optics {
    absorption.requireWithin(0, 1e6, "absorption");
    scattering.requireWithin(0, 1e6, "scattering");
    if (!(gloss >= 0 && gloss <= 1e6)) {
      throw new IllegalArgumentException("gloss must lie in 0..1e6, was " + gloss);
    }
    Objects.requireNonNull(source, "source");
    if (!(expectedError > 0 && expectedError < 100)) {
      throw new IllegalArgumentException("expected error must lie in 0..100, was " + expectedError);
    }
  }
}
