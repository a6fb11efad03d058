package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.colour.HueWord;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.colour.Srgb;

class ColourWordsTest {
  /** The named sRGB colours of CSS Color 4, section 6.1, and grey scales of CIELAB. */
  @ParameterizedTest(name = "{0} is {2}")
  @CsvSource({
    "darkgreen, #006400, dark green",
    "saddlebrown, #8b4513, brown",
    "olivedrab, #6b8e23, yellow green",
    "gold, #ffd700, clean yellow",
    "red, #ff0000, clean red",
    "blue, #0000ff, dark clean blue",
    "lightpink, #ffb6c1, pink",
    "slategray, #708090, bluish grey",
    "black, #000000, black",
    "white, #ffffff, white",
    "gray, #808080, grey",
  })
  void namesTheColoursOfTheWeb(String name, String hex, String phrase) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    Srgb srgb = new Srgb((rgb >> 16) / 255.0, ((rgb >> 8) & 255) / 255.0, (rgb & 255) / 255.0);
    assertThat(ColourWords.describe(Oklab.ofD65(srgb.toXyzD65()).toOklch()))
        .as(name)
        .isEqualTo(phrase);
  }

  /** Typical dried masstones in CIELAB, common practice. */
  @ParameterizedTest(name = "L* {0} a* {1} b* {2} is {3}")
  @CsvSource({
    "30, 2, 8, dark brownish grey",
    "40, -12, 8, dark greyed green",
    "38, 14, 22, brown",
    "60, 12, 40, ochre",
    "15, 0, 0, black",
  })
  void namesPaintersDullColours(double l, double a, double b, String phrase) {
    Oklch colour = Oklab.ofD65(new Lab(l, a, b).toXyz(Light.D65.white())).toOklch();
    assertThat(ColourWords.describe(colour)).isEqualTo(phrase);
  }

  @ParameterizedTest
  @EnumSource(HueWord.class)
  void hueWordsArePlain(HueWord word) {
    assertThat(ColourWords.label(word)).matches("[a-z]+( [a-z]+)?");
  }

  @Test
  void arcsNameTheirEnds() {
    assertThat(ColourWords.arc(List.of(HueWord.BLUE))).isEqualTo("blue");
    assertThat(ColourWords.arc(List.of(HueWord.VIOLET, HueWord.PURPLE)))
        .isEqualTo("violet and purple");
    assertThat(ColourWords.arc(List.of(HueWord.VIOLET, HueWord.PURPLE, HueWord.MAGENTA)))
        .isEqualTo("violet to magenta");
  }
}
