package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpectrumTest {
  @Test
  void arraysAreCopiedInAndOut() {
    double[] values = new double[Bands.COUNT];
    Spectrum spectrum = Spectrum.of(values);
    values[3] = 9;
    spectrum.toArray()[4] = 9;

    assertThat(spectrum).isEqualTo(Spectrum.flat(0));
  }

  @Test
  void wavelengthsAreBandCentres() {
    Spectrum ramp = Spectrum.ofWavelengths(nm -> nm);

    assertThat(ramp.at(0)).isEqualTo(380);
    assertThat(ramp.at(35)).isEqualTo(730);
    assertThat(ramp.min()).isEqualTo(380);
    assertThat(ramp.max()).isEqualTo(730);
  }

  @Test
  void mapChangesEveryValue() {
    assertThat(Spectrum.flat(0.25).map(v -> v * 2)).isEqualTo(Spectrum.flat(0.5));
  }

  @Test
  void equalValuesMakeEqualSpectra() {
    assertThat(Spectrum.flat(0.5)).hasSameHashCodeAs(Spectrum.ofBands(band -> 0.5));
    assertThat(Spectrum.flat(0.5)).isNotEqualTo(Spectrum.flat(0.6));
    assertThat(Spectrum.flat(0.5)).hasToString(Spectrum.ofBands(band -> 0.5).toString());
  }

  @Test
  void wrongNumberOfBandsIsRefused() {
    assertThatThrownBy(() -> Spectrum.of(1, 2, 3))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a spectrum has 36 bands, was 3");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void valuesThatAreNoNumbersAreRefusedWithTheirBand(double value) {
    assertThatThrownBy(() -> Spectrum.ofBands(band -> band == 4 ? value : 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("420 nm")
        .hasMessageContaining(Double.toString(value));
  }

  @Test
  void valuesOutsideARangeAreNamedWithTheirBand() {
    Spectrum spectrum = Spectrum.ofBands(band -> band == 4 ? 1.7 : 0.5);

    assertThat(spectrum.requireWithin(0, 1.7, "reflectance")).isSameAs(spectrum);
    assertThatThrownBy(() -> spectrum.requireWithin(0, 1, "reflectance"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("reflectance must lie in 0.0..1.0, was 1.7 at 420 nm");
  }
}
