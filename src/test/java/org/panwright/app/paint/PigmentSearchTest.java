package org.panwright.app.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.store.PigmentLibraryReader;

class PigmentSearchTest {
  private final PigmentSearch search = new PigmentSearch(PigmentLibraryReader.read());

  @ParameterizedTest(name = "{0} finds {1} first")
  @CsvSource({
    "PB29, PB29",
    "pb29, PB29",
    "' PB15:3 ', PB15:3",
    "ultramarine blue, PB29",
    "blue ultramarine, PB29"
  })
  void findsByCodeOrWords(String typed, String code) {
    assertThat(search.matching(typed).get(0).name().code()).isEqualTo(code);
  }

  @Test
  void aCodeExactlyTypedComesBeforeLongerOnes() {
    List<String> codes =
        search.matching("py15").stream().map(pigment -> pigment.name().code()).toList();
    assertThat(codes).contains("PY150", "PY154");
    assertThat(search.matching("py150").get(0).name().code()).isEqualTo("PY150");
  }

  @Test
  void nothingTypedShowsAll() {
    assertThat(search.matching("")).hasSizeGreaterThanOrEqualTo(90);
  }

  @Test
  void wordsNoPigmentHasFindNothing() {
    assertThat(search.matching("ultramarine zebra")).isEmpty();
  }
}
