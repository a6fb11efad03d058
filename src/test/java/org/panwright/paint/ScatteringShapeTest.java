package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.Tolerance;
import org.panwright.colour.Spectrum;

class ScatteringShapeTest {
  @Test
  void coarsePigmentScattersAllWavelengthsAlike() {
    assertThat(new ScatteringShape(0.4, 0).scattering()).isEqualTo(Spectrum.flat(0.4));
  }

  @Test
  void finePigmentScattersBlueMore() {
    Spectrum s = new ScatteringShape(0.4, 4).scattering();

    // Rayleigh's law: the fourth power of the wavelength; (550/400)⁴ = 3.5745 by hand.
    assertThat(s.at(17)).isCloseTo(0.4, Tolerance.ROUND_TRIP);
    assertThat(s.at(2) / 0.4).isCloseTo(Math.pow(550.0 / 400, 4), Tolerance.ROUND_TRIP);
  }

  @ParameterizedTest
  @CsvSource({"-0.1, 1", "1000, 1", "NaN, 1", "1, -0.1", "1, 5", "1, NaN"})
  void figuresOutOfRangeAreRefused(double at550, double exponent) {
    assertThatThrownBy(() -> new ScatteringShape(at550, exponent))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
