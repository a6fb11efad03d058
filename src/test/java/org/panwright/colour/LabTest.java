package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.github.ajalt.colormath.model.LAB;
import com.github.ajalt.colormath.model.XYZ;
import com.github.ajalt.colormath.model.XYZColorSpace;
import com.github.ajalt.colormath.model.XYZColorSpaces;
import com.github.ajalt.colormath.model.xyY;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.Tolerance;

class LabTest {
  private static final Xyz D65 = Light.D65.white();

  @Test
  void middleGreyOfTheStandardHasLightness50() {
    // (66/116)³ = 0.18418652, from the definition of L* in CIE 015.
    assertThat(Lab.of(D65.times(0.18418652), D65).l()).isCloseTo(50.0, Tolerance.LAB);
  }

  @ParameterizedTest(name = "lab({0} {1} {2}) under D50 is {3}")
  @CsvSource({
    // CSS Color 4, section 9.3: the specification's examples of lab() with their sRGB twins.
    "29.2345, 39.3825, 20.0664, 7d2329",
    "52.2345, 40.1645, 59.9971, c65d06",
    "60.2345, -5.3654, 58.956, 9d9318",
    "62.2345, -34.9638, 47.7721, 68a639",
    "67.5345, -8.6911, -41.6019, 62acef",
  })
  void specificationExamplesMeetTheirScreenColours(double l, double a, double b, String hex) {
    // CSS takes the D50 white from its chromaticity x = 0.3457, y = 0.3585.
    Xyz d50 = new Xyz(0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585);
    Xyz d65 = new Xyz(0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290);
    Xyz seen = Adaptation.adapt(new Lab(l, a, b).toXyz(d50), d50, d65);

    assertThat(GamutFit.ofXyzD65(seen).shown().toHex()).isEqualTo("#" + hex);
  }

  @RepeatedTest(50)
  void agreesWithAGeneralColourLibrary(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    Xyz xyz = new Xyz(random.nextDouble(), random.nextDouble(), random.nextDouble());
    XYZColorSpace space = XYZColorSpaces.INSTANCE.getXYZ65();
    xyY white = space.getWhitePoint().getChromaticity();
    LAB theirs = new XYZ((float) xyz.x(), (float) xyz.y(), (float) xyz.z(), 1, space).toLAB();

    Lab ours =
        Lab.of(
            xyz,
            new Xyz(
                white.getX() / white.getY(), 1, (1 - white.getX() - white.getY()) / white.getY()));

    assertThat(ours.l()).isCloseTo((double) theirs.getL(), Tolerance.LAB);
    assertThat(ours.a()).isCloseTo((double) theirs.getA(), Tolerance.LAB);
    assertThat(ours.b()).isCloseTo((double) theirs.getB(), Tolerance.LAB);
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.1, 0.6", "0.002, 0.001, 0.003", "0, 0, 0", "-0.01, 0.3, 1.2", "0.9, 1, 1"})
  void thereAndBackIsTheSameColour(double x, double y, double z) {
    Xyz back = Lab.of(new Xyz(x, y, z), D65).toXyz(D65);

    assertThat(back.x()).isCloseTo(x, Tolerance.ROUND_TRIP);
    assertThat(back.y()).isCloseTo(y, Tolerance.ROUND_TRIP);
    assertThat(back.z()).isCloseTo(z, Tolerance.ROUND_TRIP);
  }

  @Test
  void lightnessRisesThroughTheLinearEndWithoutAStep() {
    double epsilon = 216.0 / 24389.0;
    double below = Lab.f(Math.nextDown(epsilon));
    double above = Lab.f(Math.nextUp(epsilon));

    assertThat(above).isCloseTo(below, Tolerance.ROUND_TRIP);
    assertThat(Lab.f(0)).isCloseTo(16.0 / 116, Tolerance.ROUND_TRIP);
    assertThat(Lab.f(-0.01)).isLessThan(Lab.f(0));
  }

  @Test
  void chromaAndHueAreThoseOfAPlane() {
    Lab lab = new Lab(50, -30, 40);

    assertThat(lab.chroma()).isCloseTo(50.0, Tolerance.ROUND_TRIP);
    assertThat(lab.hueDeg()).isCloseTo(126.869897645844, Tolerance.HUE_DEG);
    assertThat(new Lab(50, 0, 0).hueDeg()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"NaN, 0, 0", "0, Infinity, 0", "0, 0, -Infinity"})
  void coordinatesThatAreNoNumbersAreRefused(double l, double a, double b) {
    assertThatThrownBy(() -> new Lab(l, a, b))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Lab coordinates must be finite");
    assertThatThrownBy(() -> new Xyz(l, a, b))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("XYZ coordinates must be finite");
  }
}
