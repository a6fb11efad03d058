package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          blanks | 66 -4 -9
          commas | 66,-4,-9
          commas and blanks | 66, -4, -9
          semicolons | 66; -4; -9
          typographic minus | 66 −4 −9
          """)
  void threeNumbersAreLab(String how, String text) {
    assertThat(ColourText.parse(text)).as(how).contains(new Lab(66, -4, -9));
  }

  @Test
  void aDecimalCommaIsRead() {
    assertThat(ColourText.parse("66,5; -4,25; 9")).contains(new Lab(66.5, -4.25, 9));
  }

  /** White and red of IEC 61966-2-1 in CIELAB, D65 (the widely published values). */
  @ParameterizedTest
  @CsvSource({"#ffffff, 100, 0, 0", "FF0000, 53.24, 80.09, 67.20"})
  void sixDigitsAreSrgb(String text, double l, double a, double b) {
    Lab lab = ColourText.parse(text).orElseThrow();
    assertThat(lab.l()).isCloseTo(l, within(0.05));
    assertThat(lab.a()).isCloseTo(a, within(0.05));
    assertThat(lab.b()).isCloseTo(b, within(0.05));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "green", "#12345", "50 10", "50 10 10 10", "150 0 0", "50 NaN 0", "50 999 0"})
  void whatIsNoColourIsNone(String text) {
    assertThat(ColourText.parse(text)).isEmpty();
  }
}
