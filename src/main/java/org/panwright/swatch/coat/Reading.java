package org.panwright.swatch.coat;

import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Xyz;
import org.panwright.paint.CoatReading;

/** What was read off one dry place: a reflectance, or only its colour. */
public sealed interface Reading {
  /** The colour under D65, 2° observer. */
  Lab lab();

  /** The reflectance: measured, or the {@link Smoothest} one of that colour. */
  Spectrum reflectance();

  /**
   * The darkest value that was read, 0..1: of the bands of a reflectance, of X, Y and Z against
   * white where only a colour was read.
   */
  default double darkest() {
    if (this instanceof OfSpectrum measured) {
      return measured.reflectance().min();
    }
    Xyz white = Light.D65.white();
    Xyz seen = lab().toXyz(white);
    return Math.min(seen.x() / white.x(), Math.min(seen.y() / white.y(), seen.z() / white.z()));
  }

  /** How far its colour is from another's, in CIEDE2000 under D65. */
  default double ciede2000(Reading other) {
    return Difference.ciede2000(lab(), other.lab());
  }

  /** The same, to be kept with a paint. */
  default CoatReading kept() {
    return this instanceof OfSpectrum measured
        ? new CoatReading.OfSpectrum(measured.reflectance())
        : new CoatReading.OfColour(lab());
  }

  /** A reading kept with a paint. */
  static Reading of(CoatReading kept) {
    return kept instanceof CoatReading.OfSpectrum measured
        ? new OfSpectrum(measured.reflectance())
        : new OfColour(kept.lab());
  }

  /**
   * A measured reflectance, seen from outside.
   *
   * @param reflectance 0..1 in every band
   */
  record OfSpectrum(Spectrum reflectance) implements Reading {
    public OfSpectrum {
      reflectance.requireWithin(0, 1, "reflectance");
    }

    @Override
    public Lab lab() {
      return Light.D65.lab(reflectance);
    }
  }

  /**
   * A colour alone, as a scanner or a colorimeter gives it.
   *
   * @param lab under D65, 2° observer; L* above 0 and below 100
   */
  record OfColour(Lab lab) implements Reading {
    public OfColour {
      if (!(lab.l() > 0 && lab.l() < 100)) {
        throw new IllegalArgumentException("L* must lie between 0 and 100, was " + lab.l());
      }
    }

    @Override
    public Spectrum reflectance() {
      return Smoothest.reflectance(lab);
    }
  }
}
