package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.panwright.Tolerance;
import org.panwright.colour.Bands;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paper;

class FilmTest {
  private static final Film YELLOW = Film.of(Samples.YELLOW, 0.4);
  private static final Film BLUE = Film.of(Samples.BLUE, 0.2);
  private static final Film WHITE = Film.of(Samples.WHITE, 0.5);

  @Test
  void noPaintShowsThePaper() {
    Spectrum seen = Film.NONE.dry(Paper.WHITE);

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(seen.at(band)).isCloseTo(Paper.WHITE.reflectance().at(band), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void glossOfTheWholeCoatSmoothsItsFaceAndNotThePapers() {
    // Nothing comes from inside a film that only absorbs: R = 0.03 exp(-(0.5 · 1.2 + 0.8 · 0.5)).
    Optics shiny = black(1.2);
    Film coat = Film.of(shiny, 0.5).plus(black(0.5), 0.8);

    assertThat(coat.dry(Paper.WHITE).at(0)).isCloseTo(0.03 * Math.exp(-1), Tolerance.ROUND_TRIP);
    assertThat(coat.times(2).gloss()).isCloseTo(2, Tolerance.ROUND_TRIP);
    assertThat(Film.of(shiny, 0).dry(Paper.WHITE).at(9))
        .isCloseTo(Paper.WHITE.reflectance().at(9), Tolerance.ROUND_TRIP);
  }

  @Test
  void waterHidesTheGloss() {
    assertThat(Film.of(black(3), 1).wet(Paper.WHITE))
        .isEqualTo(Film.of(black(0), 1).wet(Paper.WHITE));
  }

  @Test
  void aGroundDarkerThanAFaceHasLessOfOne() {
    Spectrum line = Spectrum.flat(0.02);

    assertThat(Film.NONE.seen(line, Surface.DRY).at(0)).isCloseTo(0.02, Tolerance.ROUND_TRIP);
  }

  private static Optics black(double gloss) {
    return new Optics(Spectrum.flat(1e5), Spectrum.flat(0), gloss, OpticsSource.SPECTRA, 1);
  }

  @Test
  void glazeIsKubelkasTwoLayers() {
    // P. Kubelka, Journal of the Optical Society of America 44, 1954: R1 + T1² R2 / (1 − R1 R2).
    Spectrum glaze = WHITE.over(BLUE.over(Paper.WHITE));

    for (int band = 0; band < Bands.COUNT; band++) {
      double k = WHITE.absorption().at(band);
      double s = WHITE.scattering().at(band);
      double upper = Coat.overBlack(k, s, 1);
      double passed = Coat.transmittance(k, s, 1);
      double lower = BLUE.over(Paper.WHITE).at(band);
      assertThat(glaze.at(band))
          .isCloseTo(upper + passed * passed * lower / (1 - upper * lower), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void twoCoatsOfOnePaintAreOneCoatOfTwiceTheLoad() {
    Spectrum twice = BLUE.over(BLUE.over(Paper.WHITE));
    Spectrum once = BLUE.times(2).over(Paper.WHITE);

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(twice.at(band)).isCloseTo(once.at(band), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void orderOfGlazesMattersWhenTheUpperScatters() {
    double whiteOnTop = lightness(WHITE.over(BLUE.over(Paper.WHITE)));
    double blueOnTop = lightness(BLUE.over(WHITE.over(Paper.WHITE)));

    assertThat(whiteOnTop).isGreaterThan(blueOnTop + 5);
  }

  @Test
  void orderOfGlazesIsNothingWhenNeitherScatters() {
    Film first = Film.of(Samples.optics(nm -> nm / 400, nm -> 0, 5), 0.5);
    Film second = Film.of(Samples.optics(nm -> 2 - nm / 500, nm -> 0, 5), 0.3);
    Spectrum one = first.over(second.over(Paper.WHITE));
    Spectrum other = second.over(first.over(Paper.WHITE));

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(one.at(band)).isCloseTo(other.at(band), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void stirringAddsAbsorptionAndScattering() {
    Film mixed = Film.of(Samples.YELLOW, 0.4).plus(Samples.BLUE, 0.2);

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(mixed.absorption().at(band))
          .isCloseTo(
              YELLOW.absorption().at(band) + BLUE.absorption().at(band), Tolerance.ROUND_TRIP);
      assertThat(mixed.scattering().at(band))
          .isCloseTo(
              YELLOW.scattering().at(band) + BLUE.scattering().at(band), Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void negativeLoadsAndFilmsAreRefused() {
    assertThatThrownBy(() -> Film.of(Samples.BLUE, -0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("load must not be negative, was -0.1");
    assertThatThrownBy(() -> Film.of(Samples.BLUE, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Film(Spectrum.flat(-1), Spectrum.flat(0), 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("absorption of a film");
  }

  private static double lightness(Spectrum inside) {
    return Light.D65.lab(inside.map(Surface.DRY::outside)).l();
  }
}
