package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Bands;

/** No form of the coat equation loses digits, least of all where B·X is tiny. */
class CoatPrecisionTest {
  /** A handful of roundings of a number near 1; S·X up to 80 makes the handful large. */
  private static final Offset<Double> ROUNDING = Offset.offset(1e-14);

  private static final Surface NO_FACE = new Surface(0, 0, 0);

  @ParameterizedTest(name = "K from {0}, S from {1}, X from {2} upwards")
  @CsvSource({
    "1e-3,  1e-3,  1e-3",
    "1e-12, 1e-3,  1e-3",
    "1e-3,  1e-12, 1e-3",
    "1e-9,  1e-9,  1e-9",
    "1e-16, 1e-16, 1e-12",
    "1e-150, 1e-2, 1e-3",
    "1e-300, 1e-300, 1e-6",
  })
  void bothFormsAreExactToARounding(double lowK, double lowS, double lowX) {
    Random random = new Random(2005);
    for (int i = 0; i < 12; i++) {
      double[] k = upTo(random, lowK, 20);
      double[] s = upTo(random, lowS, 20);
      double x = lowX * Math.pow(4 / lowX, random.nextDouble());
      double[] g = random.doubles(Bands.COUNT).toArray();
      double[] fast = new double[Bands.COUNT];
      CoatRow row = new CoatRow(NO_FACE);
      System.arraycopy(k, 0, row.k, 0, k.length);
      System.arraycopy(s, 0, row.s, 0, s.length);
      row.changed();
      row.over(g, x, fast);

      for (int band = 0; band < Bands.COUNT; band++) {
        double exact = ExactCoat.reflectance(k[band], s[band], x, g[band]);
        String where = "K %s, S %s, X %s over %s".formatted(k[band], s[band], x, g[band]);
        assertThat(Coat.reflectance(k[band], s[band], x, g[band]))
            .as(where)
            .isCloseTo(exact, ROUNDING);
        assertThat(fast[band]).as(where).isCloseTo(exact, ROUNDING);
      }
    }
  }

  @Test
  void whatAThinCoatAddsOverBlackKeepsAllItsDigits() {
    CoatRow row = new CoatRow(NO_FACE);
    double[] black = new double[Bands.COUNT];
    double[] fast = new double[Bands.COUNT];
    for (int exponent = 0; exponent < Bands.COUNT; exponent++) {
      row.k[exponent] = Math.pow(10, -exponent);
      row.s[exponent] = Math.pow(10, -exponent / 2.0);
    }
    row.changed();
    for (double x = 1; x > 1e-20; x /= 10) {
      row.over(black, x, fast);
      for (int band = 0; band < Bands.COUNT; band++) {
        double exact = ExactCoat.reflectance(row.k[band], row.s[band], x, 0);
        // Over black R itself is the small number: the error counts relative to it.
        assertThat(fast[band] / exact).isCloseTo(1, ROUNDING);
        assertThat(Coat.overBlack(row.k[band], row.s[band], x) / exact).isCloseTo(1, ROUNDING);
      }
    }
  }

  private static double[] upTo(Random random, double low, double high) {
    return random
        .doubles(Bands.COUNT)
        .map(u -> u < 0.1 ? 0 : low * Math.pow(high / low, u))
        .toArray();
  }
}
