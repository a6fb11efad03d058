package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedDateTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "2027-05-15, 2027-05-15",
    " 2027-5-5 , 2027-05-05",
    "15.5.2027, 2027-05-15",
    "15. 5. 2027, 2027-05-15",
    "15/05/2027, 2027-05-15",
    "29.2.2028, 2028-02-29",
    "31/12/9999, 9999-12-31"
  })
  void readsTheWaysDatesAreWritten(String typed, LocalDate date) {
    assertThat(TypedDate.read(typed)).contains(date);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "soon",
        "29.2.2027",
        "2027-13-01",
        "15.5.27",
        "15.5/2027",
        "5-15-2027",
        "0.1.2027",
        "2027",
        "15.5.20270"
      })
  void whatIsNoDateIsNone(String typed) {
    assertThat(TypedDate.read(typed)).isEmpty();
  }
}
