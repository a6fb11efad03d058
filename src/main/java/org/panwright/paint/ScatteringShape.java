package org.panwright.paint;

import org.panwright.colour.Spectrum;

/**
 * A pigment's scattering over wavelength.
 *
 * <pre>S(λ) = at550 · (λ / 550 nm)^−exponent, per unit load</pre>
 *
 * @param at550 S·X of a masstone coat at 550 nm, not negative
 * @param exponent 0 for coarse pigments to about 2 for very fine ones
 */
public record ScatteringShape(double at550, double exponent) {
  public ScatteringShape {
    if (!(at550 >= 0 && at550 < 1000)) {
      throw new IllegalArgumentException("scattering must lie in 0..1000, was " + at550);
    }
    if (!(exponent >= 0 && exponent <= 4)) {
      throw new IllegalArgumentException("scattering exponent must lie in 0..4, was " + exponent);
    }
  }

  /** S(λ) per unit load. */
  public Spectrum scattering() {
    return Spectrum.ofWavelengths(nm -> at550 * Math.pow(nm / 550, -exponent));
  }
}
