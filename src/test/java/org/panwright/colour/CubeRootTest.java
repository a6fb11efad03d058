package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class CubeRootTest {
  private static final Offset<Double> RELATIVE = Offset.offset(1e-14);

  @Test
  void cubeOfTheRootIsTheNumber() {
    for (double t = 1e-12; t < 1e12; t *= 1.0137) {
      double root = CubeRoot.of(t);

      assertThat(root / Math.cbrt(t)).as("∛%s", t).isCloseTo(1.0, RELATIVE);
    }
  }

  @Test
  void wholeRootsComeOutWhole() {
    for (int whole = 1; whole < 100; whole++) {
      assertThat(CubeRoot.of(whole * whole * whole) / whole).isCloseTo(1.0, RELATIVE);
    }
  }
}
