package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScriptTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "accents stay, terre d'ombre brûlée, terre d'ombre brûlée",
    "Greek stays, μπλε του κοβαλτίου, μπλε του κοβαλτίου",
    "Hebrew stays, כחול, כחול",
    "Cyrillic stays, синий, синий",
    "an emoji is one square, blue \uD83C\uDFA8, blue □",
    "a joined emoji is one square, \uD83D\uDC69\u200D\uD83C\uDFA8, □",
    "a sign without glyph is a square, 群青, □□",
    "a direction mark is nothing, a\u202Eb, ab"
  })
  void printsWhatTheFacesHave(String row, String text, String printed) {
    assertThat(Script.printable(text)).as(row).isEqualTo(printed);
  }

  @Test
  void composesAccents() {
    assertThat(Script.printable("bru\u0302le\u0301e")).isEqualTo("brûlée");
  }

  @Test
  void makesOneLineOfManyAndDropsControls() {
    assertThat(Script.printable("  sap\r\n\tgreen\u0000 ")).isEqualTo("sap green");
  }

  @Test
  void loneSurrogatesBecomeSquares() {
    assertThat(Script.printable("a\uD83Cb")).isEqualTo("a□b");
  }

  @Test
  void leftToRightStaysAsItIs() {
    assertThat(Script.visual("ultramarine (deep)")).isEqualTo("ultramarine (deep)");
  }

  /** Unicode Standard Annex 9: numbers in right-to-left text keep their direction. */
  @Test
  void rightToLeftIsReversedNumbersAreNot() {
    assertThat(Script.visual("\u05D0\u05D1 12")).isEqualTo("12 \u05D1\u05D0");
  }

  /** Unicode Standard Annex 9, rule HL1: the line's direction is set, not taken from its start. */
  @Test
  void aSentenceThatBeginsWithAHebrewNameRunsFromLeftToRight() {
    assertThat(Script.visual("\u05D0\u05D1: full, 2 layers"))
        .isEqualTo("\u05D1\u05D0: full, 2 layers");
  }

  /** Unicode Standard Annex 9, rule L4: brackets in right-to-left text are mirrored. */
  @Test
  void bracketsInRightToLeftAreMirrored() {
    assertThat(Script.visual("\u05D0(\u05D1)")).isEqualTo("(\u05D1)\u05D0");
  }

  @Test
  void saysWhetherALetterIsMissing() {
    assertThat(Script.isComplete("brûlée")).isTrue();
    assertThat(Script.isComplete("blue \uD83C\uDFA8")).isFalse();
  }
}
