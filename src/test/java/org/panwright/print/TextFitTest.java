package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextFitTest {
  private static final TextFit EIGHT = TextFit.of(Typeface.REGULAR, 8);
  private static final double ROOMY_MM = 20;

  @Test
  void shortTextKeepsItsSize() {
    assertThat(EIGHT.within("rose", 20, ROOMY_MM))
        .isEqualTo(new FittedText(Typeface.REGULAR, 8, java.util.List.of("rose"), false));
  }

  @Test
  void slightlyLongTextShrinksToOneLine() {
    double width = 0.9 * Typeface.REGULAR.widthMm("cobalt turquoise", 8);

    FittedText fitted = EIGHT.within("cobalt turquoise", width, ROOMY_MM);

    assertThat(fitted.lines()).containsExactly("cobalt turquoise");
    assertThat(fitted.sizePt()).isBetween(6.8, 7.25);
  }

  @Test
  void longTextWrapsBetweenWords() {
    double width = 0.6 * Typeface.REGULAR.widthMm("cobalt turquoise", 8);

    FittedText fitted = EIGHT.within("cobalt turquoise", width, ROOMY_MM);

    assertThat(fitted.lines()).containsExactly("cobalt", "turquoise");
    assertThat(fitted.sizePt()).isEqualTo(8);
  }

  @Test
  void aWordTooLongIsBrokenAtTheSmallestSize() {
    double width = 0.5 * Typeface.REGULAR.widthMm("quinacridone", 5);

    FittedText fitted = EIGHT.within("quinacridone", width, ROOMY_MM);

    assertThat(fitted.sizePt()).isEqualTo(TextFit.LEGIBLE_PT);
    assertThat(String.join("", fitted.lines())).isEqualTo("quinacridone");
    assertThat(fitted.cut()).isFalse();
  }

  @Test
  void whatIsStillTooLongIsCutWithAnEllipsis() {
    FittedText fitted = EIGHT.within("ultramarine ".repeat(25), 15, 5);

    assertThat(fitted.cut()).isTrue();
    assertThat(fitted.sizePt()).isEqualTo(TextFit.LEGIBLE_PT);
    assertThat(fitted.lines().get(fitted.lines().size() - 1)).endsWith("…");
    assertThat(fitted.heightMm()).isLessThanOrEqualTo(5);
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 5, 8, 13, 21, 34})
  void neverWiderThanAsked(double widthMm) {
    for (String text : new String[] {"x", "burnt sienna", "a".repeat(300), "ab cd ".repeat(50)}) {
      assertThat(EIGHT.within(text, widthMm, 6).widthMm()).isLessThanOrEqualTo(widthMm);
      assertThat(EIGHT.line(text, widthMm).widthMm()).isLessThanOrEqualTo(widthMm);
      assertThat(EIGHT.paragraph(text, widthMm).widthMm()).isLessThanOrEqualTo(widthMm);
    }
  }

  @Test
  void aParagraphKeepsAllItsWords() {
    assertThat(String.join(" ", EIGHT.paragraph("one two three four five", 12).lines()))
        .isEqualTo("one two three four five");
  }

  @Test
  void sizesBelowTheLegibleAreRefused() {
    assertThatThrownBy(() -> new TextFit(Typeface.REGULAR, 8, 4.5))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
