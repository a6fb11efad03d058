package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.github.ajalt.colormath.model.XYZ;
import com.github.ajalt.colormath.model.XYZColorSpaces;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.Tolerance;

class OklabTest {
  /** B. Ottosson, "A perceptual color space for image processing", 2020: the table of pairs. */
  @ParameterizedTest(name = "XYZ {0} {1} {2}")
  @CsvSource({
    "0.950, 1.000, 1.089, 1.000, 0.000, 0.000",
    "1.000, 0.000, 0.000, 0.450, 1.236, -0.019",
    "0.000, 1.000, 0.000, 0.922, -0.671, 0.263",
    "0.000, 0.000, 1.000, 0.153, -1.415, -0.449",
  })
  void isTheValueOfThePublishedTable(double x, double y, double z, double l, double a, double b) {
    Oklab oklab = Oklab.ofD65(new Xyz(x, y, z));

    assertThat(oklab.l()).isCloseTo(l, Tolerance.OKLAB_PRINTED);
    assertThat(oklab.a()).isCloseTo(a, Tolerance.OKLAB_PRINTED);
    assertThat(oklab.b()).isCloseTo(b, Tolerance.OKLAB_PRINTED);
  }

  @ParameterizedTest(name = "oklch({0} {1} {2}) is {3}")
  @CsvSource({
    // CSS Color 4, section 9.4: the specification's examples of oklch() with their sRGB twins.
    "0.40101, 0.12332, 21.555, 7d2329",
    "0.59686, 0.15619, 49.7694, c65d06",
    "0.65125, 0.13138, 104.097, 9d9318",
    "0.66016, 0.15546, 134.231, 68a639",
    "0.72322, 0.12403, 247.996, 62acef",
  })
  void specificationExamplesMeetTheirScreenColours(double l, double c, double h, String hex) {
    GamutFit fit = GamutFit.of(new Oklch(l, c, h));

    assertThat(fit.shown().toHex()).isEqualTo("#" + hex);
    assertThat(fit.exact()).isTrue();
  }

  @RepeatedTest(50)
  void agreesWithAGeneralColourLibrary(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    Xyz xyz = new Xyz(random.nextDouble(), random.nextDouble(), random.nextDouble());
    com.github.ajalt.colormath.model.Oklab theirs =
        new XYZ(
                (float) xyz.x(),
                (float) xyz.y(),
                (float) xyz.z(),
                1,
                XYZColorSpaces.INSTANCE.getXYZ65())
            .toOklab();

    Oklab ours = Oklab.ofD65(xyz);

    assertThat(ours.l()).isCloseTo((double) theirs.getL(), Tolerance.OKLAB);
    assertThat(ours.a()).isCloseTo((double) theirs.getA(), Tolerance.OKLAB);
    assertThat(ours.b()).isCloseTo((double) theirs.getB(), Tolerance.OKLAB);
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0.1, 0.6", "0.002, 0.001, 0.003", "0, 0, 0", "-0.01, 0.3, 1.2"})
  void thereAndBackIsTheSameColour(double x, double y, double z) {
    Xyz back = Oklab.ofD65(new Xyz(x, y, z)).toOklch().toOklab().toXyzD65();

    assertThat(back.x()).isCloseTo(x, Tolerance.ROUND_TRIP);
    assertThat(back.y()).isCloseTo(y, Tolerance.ROUND_TRIP);
    assertThat(back.z()).isCloseTo(z, Tolerance.ROUND_TRIP);
  }

  @Test
  void greysAreNeutral() {
    assertThat(Oklab.ofD65(Light.D65.white().times(0.3)).toOklch().isNeutral()).isTrue();
    assertThat(new Oklch(0.5, 0.1, 20).isNeutral()).isFalse();
  }

  @Test
  void blueTintsKeepTheirHueWhereCielabTurnsThemViolet() {
    // Known bend of CIELAB (Hung and Berns 1995): mixing screen blue with white at equal hue in
    // Oklab moves the CIELAB hue by many degrees.
    Oklch pure = Oklab.ofD65(new Srgb(0, 0, 1).toXyzD65()).toOklch();
    Oklch pale = new Oklch(0.75, 0.12, pure.hueDeg());
    Lab pureLab = pure.toOklab().toXyzD65().toLab(Light.D65.white());
    Lab paleLab = pale.toOklab().toXyzD65().toLab(Light.D65.white());

    assertThat(Hue.between(pureLab.hueDeg(), paleLab.hueDeg())).isGreaterThan(10);
  }

  @Test
  void hueIsBroughtHomeAndChromaIsNeverNegative() {
    assertThat(new Oklch(0.5, 0.1, -30).hueDeg()).isCloseTo(330.0, Tolerance.HUE_DEG);
    assertThatThrownBy(() -> new Oklch(0.5, -0.1, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("chroma must not be negative, was -0.1");
  }

  @ParameterizedTest
  @CsvSource({"NaN, 0, 0", "0, Infinity, 0", "0, 0, NaN"})
  void coordinatesThatAreNoNumbersAreRefused(double l, double second, double third) {
    assertThatThrownBy(() -> new Oklab(l, second, third))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Oklch(l, second, third))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
