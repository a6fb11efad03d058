package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class HueWordTest {
  @Test
  void wordsCoverTheCircleWithoutGapOrOverlap() {
    HueWord[] words = HueWord.values();

    assertThat(words[0].fromDeg()).isZero();
    for (int i = 1; i < words.length; i++) {
      assertThat(words[i].fromDeg()).isEqualTo(words[i - 1].toDeg());
      assertThat(words[i].fromDeg()).isGreaterThan(words[i - 1].fromDeg());
    }
    assertThat(words[words.length - 1].toDeg()).isEqualTo(360);
  }

  @ParameterizedTest
  @EnumSource
  void lowerBoundBelongsToTheWordAndUpperToTheNext(HueWord word) {
    assertThat(HueWord.of(word.fromDeg())).isEqualTo(word);
    assertThat(HueWord.of(Math.nextDown(word.toDeg()))).isEqualTo(word);
    assertThat(HueWord.of(word.toDeg())).isNotEqualTo(word);
    assertThat(HueWord.of(word.fromDeg() + 720)).isEqualTo(word);
    assertThat(HueWord.of(word.fromDeg() - 360)).isEqualTo(word);
  }

  @ParameterizedTest(name = "{0} is {1}")
  @CsvSource({
    // Colours whose everyday English names are not in doubt, by their definition in IEC 61966-2-1
    // and CSS Color 4 (named colours red, orange, yellow, lime, green, blue, magenta, purple).
    "ff0000, RED",
    "ffa500, ORANGE",
    "ffff00, YELLOW",
    "008000, GREEN",
    "40e0d0, TURQUOISE",
    "0000ff, BLUE",
    "800080, PURPLE",
    "ff00ff, MAGENTA",
  })
  void everydayColoursLieWithinOneWordOfTheirName(String hex, HueWord expected) {
    int rgb = Integer.parseInt(hex, 16);
    Oklch colour =
        Oklab.ofD65(Srgb.ofBytes(rgb >> 16, rgb >> 8 & 255, rgb & 255).toXyzD65()).toOklch();

    assertThat(Math.abs(HueWord.of(colour.hueDeg()).ordinal() - expected.ordinal()))
        .isLessThanOrEqualTo(1);
  }
}
