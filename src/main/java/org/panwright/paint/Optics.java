package org.panwright.paint;

import java.util.Objects;
import org.panwright.colour.Spectrum;

/**
 * Kubelka–Munk absorption K(λ) and scattering S(λ) of a paint per unit load.
 *
 * <p>Load 1 is the paint's masstone coat, so K and S are without unit. Both are 0 or more in every
 * band.
 *
 * @param source where they come from
 * @param expectedError the CIEDE2000 error to expect of a coat predicted from them, above 0
 */
public record Optics(
    Spectrum absorption, Spectrum scattering, OpticsSource source, double expectedError) {
  public Optics {
    absorption.requireWithin(0, 1e6, "absorption");
    scattering.requireWithin(0, 1e6, "scattering");
    Objects.requireNonNull(source, "source");
    if (!(expectedError > 0 && expectedError < 100)) {
      throw new IllegalArgumentException("expected error must lie in 0..100, was " + expectedError);
    }
  }
}
