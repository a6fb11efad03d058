package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bounds of 3 and 6 are common practice for CIEDE2000 of paints side by side. */
class ExpectedErrorWordsTest {
  @ParameterizedTest
  @CsvSource({
    "2, the same colour to the eye (ΔE00 about 2)",
    "5, a colour near it (ΔE00 about 5)",
    "9, a colour of the same kind (ΔE00 about 9)",
    "30, another colour (ΔE00 about 30)"
  })
  void anErrorIsSaidInThePaintersTerms(double ciede2000, String said) {
    assertThat(PaintWords.error(ciede2000)).isEqualTo(said);
  }
}
