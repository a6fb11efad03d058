package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Coats of the table of Curtis et al., "Computer-Generated Watercolor", SIGGRAPH 1997, figure 5.
 */
class PublishedCoatsTest {
  private static final String TABLE = "/org/panwright/mixing/curtis-1997-figure-5.csv";
  private static final Offset<Double> THREE_DECIMALS = Offset.offset(6e-4);
  private static final Offset<Double> DOUBLE_PRECISION = Offset.offset(1e-9);

  /** The table's K and S put through the paper's coat equations by hand, three decimals. */
  @ParameterizedTest(name = "{0} at {7}")
  @CsvSource({
    "Quinacridone rose,  0.22, 1.47, 0.57, 0.05,  0.003, 0.03,  1,    1, 0.646, 0.054, 0.324",
    "Quinacridone rose,  0.22, 1.47, 0.57, 0.05,  0.003, 0.03,  1,    0, 0.039, 0.001, 0.017",
    "Quinacridone rose,  0.22, 1.47, 0.57, 0.05,  0.003, 0.03,  0.25, 1, 0.896, 0.480, 0.752",
    "Indian red,         0.46, 1.07, 1.5,  1.28,  0.38,  0.21,  1,    1, 0.512, 0.193, 0.095",
    "Indian red,         0.46, 1.07, 1.5,  1.28,  0.38,  0.21,  1,    0, 0.404, 0.125, 0.060",
    "Cadmium yellow,     0.1,  0.36, 3.45, 0.97,  0.65,  0.007, 1,    1, 0.829, 0.536, 0.002",
    "Cadmium yellow,     0.1,  0.36, 3.45, 0.97,  0.65,  0.007, 1,    0, 0.454, 0.295, 0.001",
    "French ultramarine, 0.86, 0.86, 0.06, 0.005, 0.005, 0.09,  1,    1, 0.180, 0.180, 0.887",
    "French ultramarine, 0.86, 0.86, 0.06, 0.005, 0.005, 0.09,  1,    0, 0.002, 0.002, 0.078",
    "French ultramarine, 0.86, 0.86, 0.06, 0.005, 0.005, 0.09,  0.25, 1, 0.651, 0.651, 0.970",
    "Phthalo green,      1.55, 0.47, 0.63, 0.01,  0.05,  0.035, 1,    1, 0.047, 0.397, 0.289",
    "Phthalo green,      1.55, 0.47, 0.63, 0.01,  0.05,  0.035, 1,    0, 0.003, 0.031, 0.019",
  })
  void coatOverWhiteAndOverBlackIsTheWorkedValue(
      String pigment,
      double kRed,
      double kGreen,
      double kBlue,
      double sRed,
      double sGreen,
      double sBlue,
      double load,
      double ground,
      double red,
      double green,
      double blue) {
    assertThat(Coat.reflectance(kRed, sRed, load, ground)).isCloseTo(red, THREE_DECIMALS);
    assertThat(Coat.reflectance(kGreen, sGreen, load, ground)).isCloseTo(green, THREE_DECIMALS);
    assertThat(Coat.reflectance(kBlue, sBlue, load, ground)).isCloseTo(blue, THREE_DECIMALS);
  }

  /** The paper's way back: K and S from the colours over ideal white and ideal black. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = TABLE, numLinesToSkip = 4)
  void papersOwnInverseFindsItsTable(
      String pigment,
      double kRed,
      double kGreen,
      double kBlue,
      double sRed,
      double sGreen,
      double sBlue) {
    inverseFinds(kRed, sRed);
    inverseFinds(kGreen, sGreen);
    inverseFinds(kBlue, sBlue);
  }

  /**
   * Curtis et al. 1997, section 5.1:
   *
   * <pre>
   * S = (1/b) arcoth((b² − (a − Rw)(a − 1)) / (b (1 − Rw))),   K = S (a − 1)
   * a = (Rw + (Rb − Rw + 1) / Rb) / 2,   b = √(a² − 1)
   * </pre>
   */
  private static void inverseFinds(double k, double s) {
    double white = Coat.reflectance(k, s, 1, 1);
    double black = Coat.overBlack(k, s, 1);
    double a = (white + (black - white + 1) / black) / 2;
    double b = Math.sqrt(a * a - 1);
    double coth = (b * b - (a - white) * (a - 1)) / (b * (1 - white));
    double found = 0.5 * Math.log((coth + 1) / (coth - 1)) / b;

    assertThat(found).isCloseTo(s, DOUBLE_PRECISION);
    assertThat(found * (a - 1)).isCloseTo(k, DOUBLE_PRECISION);
  }

  @ParameterizedTest(name = "over white {0}, over black {1}")
  @CsvSource({
    // Worked by hand from the same equations.
    "1, 1, 0.296761336, 0.260146717",
    "0.271073176, 0.338841470, 0.6, 0.2",
  })
  void workedPairHasTheWorkedConstants(double k, double s, double white, double black) {
    assertThat(Coat.reflectance(k, s, 1, 1)).isCloseTo(white, Offset.offset(1e-8));
    assertThat(Coat.overBlack(k, s, 1)).isCloseTo(black, Offset.offset(1e-8));
  }
}
