package org.panwright.swatch.fit;

import org.panwright.colour.Difference;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.swatch.coat.Swatch;

/**
 * What a fit makes of one swatch.
 *
 * @param swatch the swatch as read
 * @param loadFactor how many times the load noted the coat was found to have; 1 where it was known
 * @param fitted the reflectance the fitted optics give it
 */
public record SwatchResidual(Swatch swatch, double loadFactor, Spectrum fitted) {
  /** The difference in colour between the swatch and the fit, under D65. */
  public double ciede2000() {
    return Difference.ciede2000(swatch.reading().lab(), Light.D65.lab(fitted));
  }
}
