package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.Tolerance;

class HueTest {
  @ParameterizedTest(name = "{0}° is {1}°")
  @CsvSource({"0, 0", "360, 0", "-90, 270", "725, 5", "-725, 355", "-1e-18, 0"})
  void anyTurnIsBroughtHome(double turned, double home) {
    assertThat(Hue.normal(turned)).isCloseTo(home, Tolerance.HUE_DEG);
    assertThat(Hue.normal(turned)).isBetween(0.0, Math.nextDown(360.0));
  }

  @ParameterizedTest(name = "from {0}° up to {1}° it is {2}°, between them {3}°")
  @CsvSource({"350, 10, 20, 20", "10, 350, 340, 20", "0, 180, 180, 180", "90, 90, 0, 0"})
  void arcGoesUpAndBetweenIsShortest(double from, double to, double arc, double between) {
    assertThat(Hue.arc(from, to)).isCloseTo(arc, Tolerance.HUE_DEG);
    assertThat(Hue.between(from, to)).isCloseTo(between, Tolerance.HUE_DEG);
  }

  @ParameterizedTest(name = "y {0}, x {1} points to {2}°")
  @CsvSource({"0, 1, 0", "1, 0, 90", "0, -1, 180", "-1, 0, 270", "0, 0, 0", "-1, 1, 315"})
  void vectorsHaveTheAngleOfGeometry(double y, double x, double hue) {
    assertThat(Hue.degrees(y, x)).isCloseTo(hue, Tolerance.HUE_DEG);
  }
}
