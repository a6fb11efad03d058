package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PigmentNameTest {
  @ParameterizedTest
  @ValueSource(strings = {"PB29", "PB15:3", "PY3", "PBr7", "PBk11", "PW6", "PO62", "PV19", "PG7"})
  void genericNamesOfTheColourIndexAreKnownByTheirForm(String code) {
    assertThat(PigmentName.isCode(code)).isTrue();
    assertThat(PigmentName.of(code)).hasToString(code);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "PB", "B29", "pb29", "PB29 ", "PBR7", "PX1", "PB1234", "PB15:33", "PB-1"})
  void otherTextIsNoName(String text) {
    assertThat(PigmentName.isCode(text)).isFalse();
    assertThatThrownBy(() -> PigmentName.of(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("not a Colour Index generic name");
  }

  @ParameterizedTest(name = "“{0}” is {1}, kind “{2}”")
  @CsvSource({
    "PB29, PB29, ''",
    "' PR101 transparent ', PR101, transparent",
    "PBr7  raw umber, PBr7, raw umber"
  })
  void writtenFormIsReadBack(String text, String code, String variant) {
    PigmentName name = PigmentName.parse(text);

    assertThat(name.code()).isEqualTo(code);
    assertThat(name.variant()).isEqualTo(variant);
    assertThat(PigmentName.parse(name.toString())).isEqualTo(name);
  }

  @Test
  void namesSortByCodeThenKind() {
    assertThat(PigmentName.parse("PR101 red")).isGreaterThan(PigmentName.of("PR101"));
    assertThat(PigmentName.of("PB15:1")).isLessThan(PigmentName.of("PB15:3"));
  }
}
