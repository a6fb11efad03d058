package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaintEditorWordsTest {
  @ParameterizedTest(name = "“{0}” {1}")
  @CsvSource({"1, part", "' 1 ', part", "2, parts", "0.5, parts", "'', parts"})
  void oneOfThemIsNoPlural(String typed, String unit) {
    assertThat(PaintEditorWords.unit(typed)).isEqualTo(unit);
  }
}
