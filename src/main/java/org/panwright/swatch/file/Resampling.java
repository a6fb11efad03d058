package org.panwright.swatch.file;

import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * Readings at any wavelengths brought to the program's {@link Bands}.
 *
 * <p>The rule: between two wavelengths a reflectance runs straight; beyond the first and the last
 * it stays what it was. Where readings lie closer than 10 nm, a band is the mean over this line
 * under a triangle of 10 nm to either side, which is how an instrument of 10 nm sees; at 10 nm or
 * wider it is the line at the band's centre. At least 400–700 nm must be there, in steps of 20 nm
 * or less: beyond, the eye sees almost nothing (less than 0.5 % of luminance).
 */
final class Resampling {
  private static final double NEEDED_FROM_NM = 400;
  private static final double NEEDED_TO_NM = 700;
  private static final double WIDEST_STEP_NM = 20;
  private static final double SLACK_NM = 0.51;

  private final double[] wavelengths;
  private final boolean fine;

  /**
   * The rule for these wavelengths.
   *
   * @param wavelengths rising, in nanometres
   */
  Resampling(double[] wavelengths) throws TableFaultException {
    this.wavelengths = wavelengths.clone();
    double first = wavelengths[0];
    double last = wavelengths[wavelengths.length - 1];
    if (first > NEEDED_FROM_NM + SLACK_NM || last < NEEDED_TO_NM - SLACK_NM) {
      throw new TableFaultException(new TableFault.BandsMissing(first, last));
    }
    for (int i = 1; i < wavelengths.length; i++) {
      if (wavelengths[i] - wavelengths[i - 1] > WIDEST_STEP_NM + SLACK_NM) {
        throw new TableFaultException(
            new TableFault.BandsTooWide(wavelengths[i - 1], wavelengths[i]));
      }
    }
    double meanStep = (last - first) / (wavelengths.length - 1);
    fine = meanStep < Bands.STEP_NM - SLACK_NM;
  }

  /** The readings, one for each wavelength, as a spectrum of 36 bands. */
  Spectrum spectrum(double[] readings) {
    return Spectrum.ofWavelengths(nm -> fine ? seenWide(readings, nm) : line(readings, nm));
  }

  private double seenWide(double[] readings, double centreNm) {
    double sum = 0;
    double weights = 0;
    for (int offset = 1 - Bands.STEP_NM; offset < Bands.STEP_NM; offset++) {
      double weight = Bands.STEP_NM - Math.abs(offset);
      sum += weight * line(readings, centreNm + offset);
      weights += weight;
    }
    return sum / weights;
  }

  private double line(double[] readings, double nm) {
    if (nm <= wavelengths[0]) {
      return readings[0];
    }
    for (int i = 1; i < wavelengths.length; i++) {
      if (nm <= wavelengths[i]) {
        double share = (nm - wavelengths[i - 1]) / (wavelengths[i] - wavelengths[i - 1]);
        return readings[i - 1] + share * (readings[i] - readings[i - 1]);
      }
    }
    return readings[readings.length - 1];
  }
}
