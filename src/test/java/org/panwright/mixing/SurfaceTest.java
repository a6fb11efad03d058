package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.Tolerance;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;

class SurfaceTest {
  @ParameterizedTest(name = "k1 {0}, k2 {1}: {2} inside is {3} outside")
  @CsvSource({
    // Saunderson, Journal of the Optical Society of America 32, 1942; worked by hand.
    "0.04, 0.6, 0,   0.04",
    "0.04, 0.6, 0.1, 0.080851",
    "0.04, 0.6, 0.3, 0.180488",
    "0.04, 0.6, 0.5, 0.314286",
    "0.04, 0.6, 0.9, 0.791304",
    "0.04, 0.6, 1,   1",
    "0.04, 0.4, 0.1, 0.1",
    "0.04, 0.4, 0.3, 0.236364",
    "0.04, 0.4, 0.5, 0.4",
    "0.04, 0.4, 0.9, 0.85",
    "0.04, 0.4, 1,   1",
  })
  void outsideIsTheValueWorkedByHand(double k1, double k2, double inside, double outside) {
    Surface surface = Surface.saunderson(k1, k2);

    assertThat(surface.outside(inside)).isCloseTo(outside, Tolerance.REFLECTANCE_PRINTED);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.001, 0.2, 0.5, 0.99, 1})
  void insideUndoesOutside(double inside) {
    assertThat(Surface.DRY.inside(Surface.DRY.outside(inside)))
        .isCloseTo(inside, Tolerance.ROUND_TRIP);
    assertThat(Surface.WET.inside(Surface.WET.outside(inside)))
        .isCloseTo(inside, Tolerance.ROUND_TRIP);
  }

  @Test
  void readingBelowTheFaceHasNothingInside() {
    assertThat(Surface.DRY.inside(0.01)).isZero();
    assertThat(Surface.DRY.inside(0)).isZero();
  }

  @ParameterizedTest(name = "gloss {0} leaves k1 {1}")
  @CsvSource({
    // Worked by hand: 0.03 exp(-gloss).
    "0,   0.03",
    "1,   0.0110364",
    "2.5, 0.0024625",
  })
  void gumSmoothsTheFace(double gloss, double k1) {
    Surface smoothed = Surface.DRY.smoothed(gloss);

    assertThat(smoothed.seen()).isCloseTo(k1, Offset.offset(1e-7));
    assertThat(smoothed.lost()).isCloseTo(k1, Offset.offset(1e-7));
    assertThat(smoothed.inner()).isEqualTo(Surface.DRY.inner());
  }

  @Test
  void theFaceStaysBelowWhatWasRead() {
    assertThat(Surface.DRY.below(0.02).seen()).isCloseTo(0.019, Tolerance.ROUND_TRIP);
    assertThat(Surface.DRY.below(0.02).inside(0.02)).isPositive();
    assertThat(Surface.DRY.below(0.04)).isEqualTo(Surface.DRY);
  }

  @ParameterizedTest(name = "k1 {0}: nothing darker than L* {1}")
  @CsvSource({
    // Worked by hand: nothing inside leaves R = k1 (Saunderson), L* = 116 ∛k1 − 16 (CIE 015), and
    // below k1 = 216/24389 L* = 24389/27 k1.
    "0.02,  15.487",
    "0.03,  20.044",
    "0.04,  23.671",
    "0.001, 0.903",
  })
  void theFaceAloneIsTheDarkest(double k1, double darkestL) {
    Surface surface = Surface.saunderson(k1, 0.6);

    assertThat(surface.darkestL()).isCloseTo(darkestL, Offset.offset(0.0006));
    assertThat(surface.darkestL()).isCloseTo(lightness(surface, 0), Tolerance.ROUND_TRIP);
  }

  @ParameterizedTest(name = "{0} inside: dry L* {1}, freshly wet {2}, gloss seen {3}")
  @CsvSource({
    // Worked by hand from Saunderson's equation and the definition of L* in CIE 015.
    "0.01, 22.2, 4.7,  18.0",
    "0.05, 29.3, 18.6, 25.7",
    "0.2,  46.5, 40.4, 43.5",
    "0.5,  69.0, 64.9, 66.5",
  })
  void wetIsDarkerThanDryAsWorkedByHand(double inside, double dry, double wet, double gloss) {
    Offset<Double> oneDecimal = Offset.offset(0.06);

    assertThat(lightness(Surface.DRY, inside)).isCloseTo(dry, oneDecimal);
    assertThat(lightness(new Surface(0, 0.02, 0.47), inside)).isCloseTo(wet, oneDecimal);
    assertThat(lightness(Surface.WET, inside)).isCloseTo(gloss, oneDecimal);
  }

  @Test
  void dryingShiftHasTheSizeMeasuredOnRealPaints() {
    // 75 watercolours measured wet and dry: L* rises by 2.3 on average (published measurements).
    double sum = 0;
    int steps = 0;
    for (double inside = 0.01; inside < 0.8; inside += 0.01) {
      double shift = lightness(Surface.DRY, inside) - lightness(Surface.WET, inside);
      assertThat(shift).isBetween(0.0, 5.0);
      sum += shift;
      steps++;
    }
    assertThat(sum / steps).isBetween(1.3, 3.3);
  }

  @Test
  void noLightIsGained() {
    for (double inside = 0; inside <= 1; inside += 0.01) {
      assertThat(Surface.DRY.outside(inside)).isBetween(0.0, 1.0 + 1e-15);
      assertThat(Surface.WET.outside(inside)).isBetween(0.0, 1.0 + 1e-15);
    }
  }

  @ParameterizedTest
  @CsvSource({"-0.01, 0, 0", "0.3, 0, 0", "0, 0.3, 0", "0, 0, 0.95", "NaN, 0, 0", "0, 0, -1"})
  void sharesOutOfRangeAreRefused(double seen, double lost, double inner) {
    assertThatThrownBy(() -> new Surface(seen, lost, inner))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("surface shares out of range");
  }

  private static double lightness(Surface surface, double inside) {
    return Lab.of(Light.D65.white().times(surface.outside(inside)), Light.D65.white()).l();
  }
}
