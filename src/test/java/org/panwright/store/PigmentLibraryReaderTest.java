package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.paint.HueFamily;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;

class PigmentLibraryReaderTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  private static final String ROW =
      """
      {"pigments": [{
        "code": "PB29", "variant": "", "name": "ultramarine blue", "constitution": "77007",
        "family": "blue", "transparency": "transparent", "staining": "low",
        "granulation": "strong", "lightfastness": "I",
        "strength": 1, "metals": [], "fugitive": false, "caution": "",
        "absorption": {"terms": [{"band": {"atNm": 600, "fullWidthNm": 100, "height": 1}}],
                       "masstoneDepth": 5},
        "scattering": {"at550": 0.1, "exponent": 1},
        "sources": {
          "identity": {"source": "x", "confidence": "A"},
          "handling": {"source": "x", "confidence": "A"},
          "lightfastness": {"source": "x", "confidence": "A"},
          "absorption": {"source": "x", "evidence": "a band", "confidence": "A"},
          "scattering": {"source": "x", "confidence": "A"},
          "caution": {"source": "x", "confidence": "A"}}}]}
      """;

  @Test
  void holdsAtLeastNinetyPigments() {
    assertThat(LIBRARY.pigments()).hasSizeGreaterThanOrEqualTo(90);
  }

  // Constitution numbers: Colour Index International, quoted from memory.
  @ParameterizedTest(name = "{0} is {1}, {2}")
  @CsvSource({
    "PB29, 77007, BLUE",
    "PB15:3, 74160, BLUE",
    "PY42, 77492, EARTH_YELLOW",
    "PR254, 56110, RED",
    "PG7, 74260, GREEN"
  })
  void knowsIdentities(String code, String constitution, HueFamily family) {
    assertThat(LIBRARY.find(PigmentName.of(code)))
        .hasValueSatisfying(
            pigment -> {
              assertThat(pigment.constitution()).isEqualTo(constitution);
              assertThat(pigment.family()).isEqualTo(family);
            });
  }

  @Test
  void readsEveryTermOfTheShape() throws Exception {
    assertThat(read(ROW).absorption().absorption().at(22)).isEqualTo(5.0);
  }

  @ParameterizedTest(name = "{0} becomes {1}")
  @CsvSource({
    "'\"blue\"', '\"bleu\"', 'pigments[0].family'",
    "'\"strength\": 1', '\"strength\": \"much\"', 'pigments[0].strength'",
    "'{\"atNm\": 600, ', '{', 'pigments[0].absorption.terms[0].band.atNm'",
    "'\"PB29\"', '\"blue 29\"', 'pigments[0]'"
  })
  void namesTheFieldAtFault(String good, String bad, String field) {
    assertThat(ROW).contains(good);
    assertThatThrownBy(() -> read(ROW.replace(good, bad)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith("sample.json, " + field + ": ");
  }

  private static org.panwright.paint.Pigment read(String text) throws Exception {
    return PigmentLibraryReader.read(
            new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "sample.json")
        .get(0);
  }
}
