package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.Tolerance;

/** Values said to be worked by hand come from the hyperbolic form of Kubelka 1948. */
class CoatTest {
  private static final int SAMPLES = 2000;

  @ParameterizedTest(name = "K {0}, S {1}, X {2} over {3}")
  @CsvSource({
    // Kubelka, Journal of the Optical Society of America 38, 1948; worked by hand.
    "1,    1,    1,   0,    0.260146717",
    "1,    1,    1,   0.8,  0.287513850",
    "1,    1,    1,   1,    0.296761336",
    "0.5,  0.2,  1,   0.85, 0.345430093",
    "0.5,  0.2,  1,   0,    0.108360879",
    "0.5,  0.2,  1,   0.9,  0.360882316",
    "0.5,  0.2,  1,   0.05, 0.121090646",
    "2,    0.05, 0.5, 0.85, 0.121086745",
    "0.05, 2,    1,   0.85, 0.821763496",
    // K = 0: (g + (1 − g) S X) / (1 + (1 − g) S X) = 3/7.
    "0,    0.5,  1,   0.2,  0.428571429",
    // S = 0: g exp(−2 K X).
    "2,    0,    0.5, 0.85, 0.115034991",
  })
  void reflectanceIsTheValueWorkedByHand(double k, double s, double x, double g, double r) {
    assertThat(Coat.reflectance(k, s, x, g)).isCloseTo(r, Tolerance.REFLECTANCE);
  }

  @ParameterizedTest(name = "K {0}, S {1}, X {2}")
  @CsvSource({
    // Kubelka 1948, R0 and T of a free coat; worked by hand.
    "1,   1,   1, 0.260146717, 0.164588719",
    "0.5, 0.2, 1, 0.108360879, 0.503205654",
    // K = 0: SX / (1 + SX) and 1 / (1 + SX).
    "0,   0.5, 1, 0.333333333, 0.666666667",
    // S = 0: 0 and exp(−K X).
    "2,   0,   1, 0,           0.135335283",
    "0,   0,   3, 0,           1",
  })
  void freeCoatHasTheValuesWorkedByHand(double k, double s, double x, double r0, double t) {
    assertThat(Coat.overBlack(k, s, x)).isCloseTo(r0, Tolerance.REFLECTANCE);
    assertThat(Coat.transmittance(k, s, x)).isCloseTo(t, Tolerance.REFLECTANCE);
  }

  @ParameterizedTest(name = "K/S {0} hides to {1}")
  @CsvSource({
    // Kubelka and Munk, Zeitschrift für technische Physik 12, 1931: 1 + q − √(q² + 2q).
    "0.01, 0.868226",
    "0.1,  0.641742",
    "0.5,  0.381966",
    "1,    0.267949",
    "2,    0.171573",
    "5,    0.083920",
    "10,   0.045549",
  })
  void thickCoatIsThePublishedFunctionOfItsQuotient(double q, double r) {
    assertThat(Coat.thick(q, 1)).isCloseTo(r, Tolerance.REFLECTANCE_PRINTED);
    assertThat(Coat.thick(3 * q, 3)).isCloseTo(r, Tolerance.REFLECTANCE_PRINTED);
    assertThat(Coat.reflectance(q, 1, 1000, 0.9)).isCloseTo(r, Tolerance.REFLECTANCE_PRINTED);
    assertThat(Coat.reflectance(q, 1, 1000, 0)).isCloseTo(r, Tolerance.REFLECTANCE_PRINTED);
    // The inverse printed in the same paper: q = (1 − R∞)² / (2 R∞).
    double thick = Coat.thick(q, 1);
    assertThat((1 - thick) * (1 - thick) / (2 * thick)).isCloseTo(q, Tolerance.ROUND_TRIP);
  }

  @Test
  void coatWithoutPaintHasNoThickLimit() {
    assertThat(Coat.thick(0, 0)).isNaN();
    assertThat(Coat.thick(1, 0)).isZero();
    assertThat(Coat.thick(0, 1)).isEqualTo(1);
  }

  @ParameterizedTest(name = "over {0}")
  @ValueSource(doubles = {0, 0.2, 0.85, 1})
  void noCoatLeavesThePaperAsItIs(double g) {
    assertThat(Coat.reflectance(3, 2, 0, g)).isEqualTo(g);
    assertThat(Coat.reflectance(0, 0, 5, g)).isEqualTo(g);
    assertThat(Coat.transmittance(3, 2, 0)).isEqualTo(1);
  }

  @ParameterizedTest(name = "load {0}")
  @ValueSource(doubles = {1e-4, 1e-6, 1e-8, 1e-10})
  void thinCoatTendsToPaper(double x) {
    double k = 0.7;
    double s = 0.4;
    double g = 0.85;
    // First term of the series of R in X, from dR/dX = S − 2 (K + S) R + S R² at X = 0.
    double slope = s - 2 * (k + s) * g + s * g * g;

    assertThat(Coat.reflectance(k, s, x, g))
        .isCloseTo(g + slope * x, Offset.offset(10 * x * x + 2e-16));
  }

  @Test
  void neitherLimitHasAStep() {
    for (double tiny = 1e-3; tiny > 1e-15; tiny /= 10) {
      assertThat(Coat.reflectance(tiny, 0.5, 1, 0.2)).isCloseTo(3.0 / 7, Offset.offset(2 * tiny));
      assertThat(Coat.reflectance(2, tiny, 0.5, 0.85))
          .isCloseTo(0.85 * Math.exp(-2), Offset.offset(2 * tiny));
    }
  }

  @Test
  void energyIsNeverCreated() {
    Random random = new Random(1931);
    for (int i = 0; i < SAMPLES; i++) {
      double k = logUniform(random, 1e-6, 1e3);
      double s = logUniform(random, 1e-6, 1e3);
      double x = logUniform(random, 1e-6, 1e3);
      double reflected = Coat.overBlack(k, s, x);
      double passed = Coat.transmittance(k, s, x);

      assertThat(reflected).isBetween(0.0, 1.0);
      assertThat(passed).isBetween(0.0, 1.0);
      assertThat(reflected + passed).isLessThanOrEqualTo(1 + 1e-15);
      assertThat(Coat.reflectance(k, s, x, random.nextDouble())).isBetween(0.0, 1.0);
    }
  }

  @Test
  void whatIsNotAbsorbedIsReflectedOrPassed() {
    for (double s = 1e-6; s < 1e6; s *= 10) {
      assertThat(Coat.overBlack(0, s, 1) + Coat.transmittance(0, s, 1))
          .isCloseTo(1.0, Tolerance.ROUND_TRIP);
      assertThat(Coat.reflectance(0, s, 1, 1)).isCloseTo(1.0, Tolerance.ROUND_TRIP);
    }
  }

  @Test
  void moreLoadMovesFromThePaperToTheThickCoatAndNeverBack() {
    Random random = new Random(1948);
    for (int i = 0; i < 200; i++) {
      double k = logUniform(random, 1e-3, 20);
      double s = logUniform(random, 1e-3, 5);
      double g = random.nextDouble();
      double thick = Coat.thick(k, s);
      double before = g;
      for (double x = 0.01; x < 100; x *= 1.7) {
        double now = Coat.reflectance(k, s, x, g);
        assertThat((now - before) * (thick - g)).isGreaterThanOrEqualTo(-1e-15);
        assertThat(now).isBetween(Math.min(thick, g) - 1e-15, Math.max(thick, g) + 1e-15);
        before = now;
      }
    }
  }

  @Test
  void coatOverItsSubstrateIsTheFreeCoatWithManyReflections() {
    // Kubelka 1948: R = R0 + T² g / (1 − R0 g).
    Random random = new Random(1954);
    for (int i = 0; i < SAMPLES; i++) {
      double k = logUniform(random, 1e-4, 30);
      double s = logUniform(random, 1e-4, 30);
      double x = logUniform(random, 1e-3, 3);
      double g = random.nextDouble();
      double r0 = Coat.overBlack(k, s, x);
      double t = Coat.transmittance(k, s, x);

      assertThat(Coat.reflectance(k, s, x, g))
          .isCloseTo(r0 + t * t * g / (1 - r0 * g), Tolerance.ROUND_TRIP);
    }
  }

  private static double logUniform(Random random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }
}
