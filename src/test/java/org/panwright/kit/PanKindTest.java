package org.panwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PanKindTest {
  private static final PanKind.Extent OUTER = new PanKind.Extent(19, 16, 11);
  private static final PanKind.Extent INNER = new PanKind.Extent(17, 13.5, 8.5);

  /**
   * The prismatoid rule of any mensuration handbook, V = h (A₁ + 4 Aₘ + A₂) / 6: base 15.5 × 12,
   * middle 16.25 × 12.75, rim 17 × 13.5 mm, 8.5 mm high.
   */
  @Test
  void aSlopingPanMeasuresWhatThePrismatoidRuleGives() {
    PanKind pan = new PanKind("p", "pan", OUTER, INNER, 1.5, 2);
    double handbook = 8.5 * (15.5 * 12 + 4 * 16.25 * 12.75 + 17 * 13.5) / 6 / 1000;
    assertThat(pan.measuredMl()).isCloseTo(handbook, within(1e-12));
  }

  /** The same rule up to half the height: middle 15.875 × 12.375, top 16.25 × 12.75 mm. */
  @Test
  void theLowerHalfOfASlopingPanHoldsLessThanHalf() {
    PanKind pan = new PanKind("p", "pan", OUTER, INNER, 1.5, 2);
    double lower = 4.25 * (15.5 * 12 + 4 * 15.875 * 12.375 + 16.25 * 12.75) / 6 / 1000;
    assertThat(pan.ml(0.5)).isCloseTo(2 * lower / pan.measuredMl(), within(1e-12)).isLessThan(1);
    assertThat(pan.ml(0)).isZero();
    assertThat(pan.ml(1)).isEqualTo(2);
  }

  @Test
  void straightWallsFillEvenly() {
    PanKind pan = new PanKind("p", "pan", OUTER, INNER, 0, 2);
    assertThat(pan.ml(0.25)).isCloseTo(0.5, within(1e-12));
  }

  /** Common practice: a half pan holds 1.5–2.5 ml, a full one 3–4, a quarter 0.7–1. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "pan,           3,   4",
    "half-pan,      1.5, 2.5",
    "quarter-low,   0.7, 1",
    "quarter-small, 0.7, 1"
  })
  void theUsualPansMeasureWhatIsUsual(String id, double low, double high) {
    PanKind pan = Stock.NONE.pan(id).orElseThrow();
    assertThat(pan.brimMl()).isBetween(low, high);
    assertThat(pan.measuredMl()).isBetween(low * 0.95, high * 1.05);
  }

  /** Common practice: a full pan takes the place of two half pans lengthwise. */
  @Test
  void aFullPanIsAsLongAsTwoHalfPansAreWide() {
    double full = Stock.NONE.pan(PanKind.FULL_ID).orElseThrow().outer().lengthMm();
    double half = Stock.NONE.pan(PanKind.HALF_ID).orElseThrow().outer().widthMm();
    assertThat(full).isCloseTo(2 * half, within(2.0));
  }

  @ParameterizedTest(name = "inner {0} x {1} x {2}, taper {3}, {4} ml")
  @CsvSource({
    "19,   13.5, 8.5, 1.5, 2",
    "17,   16,   8.5, 1.5, 2",
    "17,   13.5, 11,  1.5, 2",
    "17,   13.5, 8.5, 14,  2",
    "17,   13.5, 8.5, 1.5, 0",
    "17,   13.5, 8.5, 1.5, -1",
    "13.5, 17,   8.5, 1.5, 2"
  })
  void aPanThatCannotBeIsRefused(
      double length, double width, double height, double taper, double ml) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new PanKind(
                    "p", "pan", OUTER, new PanKind.Extent(length, width, height), taper, ml));
  }
}
