package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {
  /** The bar stands for a space at which no line may end. */
  @ParameterizedTest
  @CsvSource({
    "closes 72 % of the gap, closes 72|% of the gap",
    "hard to tell apart (ΔE00 1.5), hard to tell apart (ΔE00|1.5)",
    "stays at L* 21., stays at L*|21.",
    "2.5 ml in 3 layers, 2.5|ml in 3 layers",
    "3 mmol of 4 gold leaves, 3 mmol of 4 gold leaves"
  })
  void figuresStayWithTheirUnits(String sentence, String set) {
    assertThat(Sentence.unbroken(sentence)).isEqualTo(set.replace('|', '\u00a0'));
  }
}
