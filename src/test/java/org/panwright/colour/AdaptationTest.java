package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.Tolerance;

class AdaptationTest {
  /** The whites of ASTM E308 that the published matrices are made for. */
  private static final Xyz D65 = new Xyz(0.95047, 1, 1.08883);

  private static final Xyz D50 = new Xyz(0.96422, 1, 0.82521);

  /** Linear Bradford matrices as published by B. Lindbloom, "Chromatic Adaptation". */
  @ParameterizedTest(name = "column of {0}")
  @CsvSource({
    "X, 1, 0, 0,  1.0478112, 0.0295424, -0.0092345,  0.9555766, -0.0282895, 0.0122982",
    "Y, 0, 1, 0,  0.0228866, 0.9904844, 0.0150436,  -0.0230393, 1.0099416, -0.0204830",
    "Z, 0, 0, 1,  -0.0501270, -0.0170491, 0.7521316,  0.0631636, 0.0210077, 1.3299098",
  })
  void matrixIsThePublishedOne(
      String column,
      double x,
      double y,
      double z,
      double to50X,
      double to50Y,
      double to50Z,
      double to65X,
      double to65Y,
      double to65Z) {
    Xyz unit = new Xyz(x, y, z);
    Xyz to50 = Adaptation.adapt(unit, D65, D50);
    Xyz to65 = Adaptation.adapt(unit, D50, D65);

    assertThat(to50.x()).as(column).isCloseTo(to50X, Tolerance.MATRIX);
    assertThat(to50.y()).as(column).isCloseTo(to50Y, Tolerance.MATRIX);
    assertThat(to50.z()).as(column).isCloseTo(to50Z, Tolerance.MATRIX);
    assertThat(to65.x()).as(column).isCloseTo(to65X, Tolerance.MATRIX);
    assertThat(to65.y()).as(column).isCloseTo(to65Y, Tolerance.MATRIX);
    assertThat(to65.z()).as(column).isCloseTo(to65Z, Tolerance.MATRIX);
  }

  @Test
  void whiteBecomesWhite() {
    Xyz adapted = Adaptation.adapt(Light.D65.white(), Light.D65.white(), Light.D50.white());

    assertThat(adapted.x()).isCloseTo(Light.D50.white().x(), Tolerance.ROUND_TRIP);
    assertThat(adapted.y()).isCloseTo(Light.D50.white().y(), Tolerance.ROUND_TRIP);
    assertThat(adapted.z()).isCloseTo(Light.D50.white().z(), Tolerance.ROUND_TRIP);
  }

  @Test
  void thereAndBackIsTheSameColour() {
    Xyz colour = new Xyz(0.2, 0.1, 0.6);
    Xyz back = Adaptation.adapt(Adaptation.adapt(colour, D65, D50), D50, D65);

    assertThat(back.x()).isCloseTo(colour.x(), Tolerance.ROUND_TRIP);
    assertThat(back.y()).isCloseTo(colour.y(), Tolerance.ROUND_TRIP);
    assertThat(back.z()).isCloseTo(colour.z(), Tolerance.ROUND_TRIP);
  }

  @Test
  void sameLightChangesNothing() {
    Xyz colour = new Xyz(0.2, 0.1, 0.6);
    Xyz same = Adaptation.adapt(colour, D65, D65);

    assertThat(same.x()).isCloseTo(colour.x(), Tolerance.ROUND_TRIP);
    assertThat(same.z()).isCloseTo(colour.z(), Tolerance.ROUND_TRIP);
  }
}
