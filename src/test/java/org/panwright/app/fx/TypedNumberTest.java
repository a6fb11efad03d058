package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedNumberTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({"12, 12", "' 2.5 ', 2.5", "'2,5', 2.5", "'.5', 0.5", "'7.', 7", "-3, -3", "+4, 4"})
  void readsWhatPeopleType(String typed, double number) {
    assertThat(TypedNumber.read(typed)).hasValue(number);
  }

  @ParameterizedTest(name = "<{0}>")
  @ValueSource(strings = {"", " ", "a", "1e9", "NaN", "1.2.3", "1 000", "0x10", "12345678901", "."})
  void whatIsNoPlainNumberIsNone(String typed) {
    assertThat(TypedNumber.read(typed)).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"12, 2, 12", "0.25, 2, 0.25", "2.50, 2, 2.5", "33.3333, 2, 33.33", "100, 0, 100"})
  void writesWithoutNeedlessZeros(double number, int decimals, String written) {
    assertThat(TypedNumber.write(number, decimals)).isEqualTo(written);
  }
}
