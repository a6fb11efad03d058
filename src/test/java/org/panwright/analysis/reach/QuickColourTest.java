package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Hue;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Xyz;

class QuickColourTest {
  @Test
  void agreesWithLabAndOklab() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      Xyz xyz = new Xyz(random.nextDouble(), random.nextDouble(), random.nextDouble());
      double[] colours = {xyz.x(), xyz.y(), xyz.z(), 0, 0, 0};
      QuickColour.convert(colours, 0);
      Lab lab = xyz.toLab(Light.D65.white());
      Oklab oklab = Oklab.ofD65(xyz);
      assertThat(colours)
          .containsExactly(
              new double[] {lab.l(), lab.a(), lab.b(), oklab.l(), oklab.a(), oklab.b()},
              within(1e-9));
    }
  }

  @Test
  void blackIsBlack() {
    double[] colours = new double[Net.COLOUR];
    QuickColour.convert(colours, 0);
    assertThat(colours).containsOnly(new double[] {0}, within(1e-9));
  }

  @Test
  void hueStepsAreTheAngle() {
    for (double degrees = 0; degrees < 360; degrees += 0.07) {
      double radians = Math.toRadians(degrees);
      double steps = QuickColour.hueSteps(0.2 * Math.cos(radians), 0.2 * Math.sin(radians));
      assertThat(Hue.between(steps * Ring.STEP_DEG, degrees)).isLessThan(1e-5);
      assertThat(steps).isBetween(0.0, 72.0).isLessThan(72);
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 0", "1, 0, 0", "0, 1, 18", "-1, 0, 36", "0, -1, 54", "1, -1e-18, 0"})
  void hueStepsOnTheAxes(double a, double b, double steps) {
    assertThat(QuickColour.hueSteps(a, b)).isCloseTo(steps, within(1e-6));
  }
}
