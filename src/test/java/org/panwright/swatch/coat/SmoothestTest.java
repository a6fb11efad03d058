package org.panwright.swatch.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Bands;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;

class SmoothestTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "paper, 95, 0, 2",
    "lemon, 88, -8, 84",
    "crimson, 35, 45, 18",
    "ultramarine, 28, 38, -62",
    "green, 45, -45, 18",
    "black, 18, 0, -1"
  })
  void hasTheColourAskedFor(String name, double l, double a, double b) {
    Lab asked = new Lab(l, a, b);

    assertThat(Difference.ciede2000(Light.D65.lab(Smoothest.reflectance(asked)), asked))
        .isLessThan(0.05);
  }

  @Test
  void staysBetweenNothingAndAllEvenForColoursNoSurfaceHas() {
    Spectrum found = Smoothest.reflectance(new Lab(50, 20, -115));

    assertThat(found.min()).isPositive();
    assertThat(found.max()).isLessThan(1);
  }

  @Test
  void aGreyIsFlat() {
    // Y of L* 50 is 0.18418652 of the white: CIE 015
    Spectrum grey = Smoothest.reflectance(new Lab(50, 0, 0));

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(grey.at(band)).isCloseTo(0.18418652, within(1e-4));
    }
  }
}
