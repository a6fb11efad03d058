package org.panwright.print;

import org.panwright.colour.Adaptation;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;

/** How a surface is printed: seen under D50, adapted to the white of sRGB, made to fit. */
final class PrintColour {
  private PrintColour() {}

  static GamutFit of(Spectrum reflectance) {
    return GamutFit.ofXyzD65(
        Adaptation.adapt(Light.D50.xyz(reflectance), Light.D50.white(), Light.D65.white()));
  }
}
