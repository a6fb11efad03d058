package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.github.ajalt.colormath.model.RGB;
import com.github.ajalt.colormath.model.RGBColorSpaces;
import com.github.ajalt.colormath.model.XYZ;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.Tolerance;

class SrgbTest {
  @ParameterizedTest(name = "primary {0} {1} {2}")
  @CsvSource({
    // IEC 61966-2-1: the matrix from linear sRGB to XYZ, printed with four decimals.
    "1, 0, 0, 0.4124, 0.2126, 0.0193",
    "0, 1, 0, 0.3576, 0.7152, 0.1192",
    "0, 0, 1, 0.1805, 0.0722, 0.9505",
  })
  void primariesAreThoseOfTheStandard(
      double red, double green, double blue, double x, double y, double z) {
    Xyz xyz = new Srgb(red, green, blue).toXyzD65();
    Offset<Double> fourDecimals = Offset.offset(6e-5);

    assertThat(xyz.x()).isCloseTo(x, fourDecimals);
    assertThat(xyz.y()).isCloseTo(y, fourDecimals);
    assertThat(xyz.z()).isCloseTo(z, fourDecimals);
  }

  @RepeatedTest(30)
  void agreesWithAGeneralColourLibrary(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    Srgb ours = new Srgb(random.nextDouble(), random.nextDouble(), random.nextDouble());
    XYZ theirs =
        new RGB(
                (float) ours.red(),
                (float) ours.green(),
                (float) ours.blue(),
                1,
                RGBColorSpaces.INSTANCE.getSRGB())
            .toXYZ();
    Offset<Double> singlePrecision = Offset.offset(1e-4);

    assertThat(ours.toXyzD65().x()).isCloseTo((double) theirs.getX(), singlePrecision);
    assertThat(ours.toXyzD65().y()).isCloseTo((double) theirs.getY(), singlePrecision);
    assertThat(ours.toXyzD65().z()).isCloseTo((double) theirs.getZ(), singlePrecision);
  }

  @Test
  void everyByteSurvivesTheWayThroughTristimulusValues() {
    for (int value = 0; value < 256; value++) {
      Srgb colour = Srgb.ofBytes(value, 255 - value, value / 2);
      GamutFit back = GamutFit.ofXyzD65(colour.toXyzD65());

      assertThat(back.shown().toHex()).isEqualTo(colour.toHex());
      assertThat(back.exact()).isTrue();
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.001, 0.0031308, 0.0031309, 0.04045, 0.18, 0.5, 1})
  void encodingAndDecodingAreInverse(double linear) {
    assertThat(Srgb.decode(Srgb.encode(linear))).isCloseTo(linear, Offset.offset(1e-7));
  }

  @Test
  void bytesAndHexAreRoundedToTheNearest() {
    Srgb colour = Srgb.ofBytes(163, 64, 31);

    assertThat(colour.redByte()).isEqualTo(163);
    assertThat(colour.greenByte()).isEqualTo(64);
    assertThat(colour.blueByte()).isEqualTo(31);
    assertThat(colour.toHex()).isEqualTo("#a3401f");
  }

  @ParameterizedTest
  @CsvSource({"-0.001, 0, 0", "0, 1.001, 0", "0, 0, NaN", "Infinity, 0, 0"})
  void whatNoScreenShowsIsRefused(double red, double green, double blue) {
    assertThatThrownBy(() -> new Srgb(red, green, blue))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("sRGB");
  }

  @Test
  void whiteOfTheScreenIsD65() {
    // IEC 61966-2-1 states its white by chromaticity: x = 0.3127, y = 0.3290.
    Xyz white = new Srgb(1, 1, 1).toXyzD65();

    assertThat(white.x()).isCloseTo(0.3127 / 0.3290, Tolerance.ROUND_TRIP);
    assertThat(white.y()).isCloseTo(1.0, Tolerance.ROUND_TRIP);
    assertThat(white.z()).isCloseTo((1 - 0.3127 - 0.3290) / 0.3290, Tolerance.ROUND_TRIP);
  }
}
