package org.panwright.paint;

import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;

/** What was read off one place of the painter's paper: a reflectance, or only its colour. */
public sealed interface CoatReading {
  /** The colour under D65, 2° observer. */
  Lab lab();

  /**
   * A colour alone, as a scanner, a photo or a colorimeter gives it.
   *
   * @param lab under D65, 2° observer; L* above 0 and below 100
   */
  record OfColour(Lab lab) implements CoatReading {
    public OfColour {
      if (!(lab.l() > 0 && lab.l() < 100)) {
        throw new IllegalArgumentException("L* must lie between 0 and 100, was " + lab.l());
      }
    }
  }

  /**
   * A measured reflectance, seen from outside.
   *
   * @param reflectance 0..1 in every band
   */
  record OfSpectrum(Spectrum reflectance) implements CoatReading {
    public OfSpectrum {
      reflectance.requireWithin(0, 1, "reflectance");
    }

    @Override
    public Lab lab() {
      return Light.D65.lab(reflectance);
    }
  }
}
