package org.panwright.swatch.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Lab;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.file.ReadingMapping.Scale;
import org.panwright.swatch.table.TableFaultException;
import org.panwright.words.SwatchWords;

/**
 * Files that hold X, Y, Z alone. Whites of ASTM E308-01, 2° observer: D65 95.047 100 108.883, D50
 * 96.422 100 82.521. Grey of half the white has L* 76.069 (116 · 0.5^⅓ − 16).
 */
class TristimulusFileTest {
  private static final String CGATS =
      """
      CGATS.17
      ILLUMINATION_NAME "%s"
      BEGIN_DATA_FORMAT
      SAMPLE_ID SAMPLE_NAME XYZ_X XYZ_Y XYZ_Z
      END_DATA_FORMAT
      BEGIN_DATA
      1 grey %s
      END_DATA
      """;

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({
    "D50, PERCENT, 48.211 50 41.2605",
    "D65, PERCENT, 47.5235 50 54.4415",
    "D50, SHARE, 0.48211 0.5 0.412605",
    "D65, SHARE, 0.475235 0.5 0.544415"
  })
  void theTextFormOfTheTradeIsReadUnderTheLightItNames(ReadingLight light, Scale scale, String grey)
      throws Exception {
    ReadingFile file = read(CGATS.formatted(light, grey));

    assertThat(file.guess().light()).isEqualTo(light);
    assertThat(file.guess().scale()).isEqualTo(scale);
    assertGrey(file, file.guess());
  }

  /** A plain table names no light, or names it in its heads; the painter can say another. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "X;Y;Z                            | D65",
        "XYZ_X;XYZ_Y;XYZ_Z                | D65",
        "CIE X;CIE Y;CIE Z                | D65",
        "X (D50);Y (D50);Z (D50)          | D50",
        "X D65/2°;Y D65/2°;Z D65/2°       | D65"
      })
  void plainTablesNameTheLightInTheirHeadsIfAtAll(String heads, ReadingLight light)
      throws Exception {
    ReadingFile d50 = read("name;" + heads + "\ngrey;48,211;50;41,2605\n");

    assertThat(d50.guess().light()).isEqualTo(light);
    assertGrey(d50, d50.guess().with(ReadingLight.D50));
  }

  /** A neutral of the one light is a tinge of the other: from D65 read as D50 a blue one. */
  @Test
  void theWrongLightIsSeen() throws Exception {
    ReadingFile file = read("name;X;Y;Z\ngrey;47,5235;50;54,4415\n");

    assertThat(colour(file, file.guess().with(ReadingLight.D50)).b()).isLessThan(-15);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "above white | 95;101;90  | line 2, column Y: 101 is above",
        "black       | 0;0;0      | line 2, column Y: 0 is below",
        "negative    | -1;50;50   | line 2, column X: -1 is below 0.",
        "no light    | 40;50;190  | line 2, column Z: 190 is above",
        "a word      | 40;dark;40 | line 2, column Y: “dark” is no number."
      })
  void whatCannotBeIsToldByLineAndColumn(String what, String values, String told) throws Exception {
    ReadingFile file =
        read("name;X;Y;Z\nfirst;" + values + "\ngrey;47,5;50;54,4\ng;47,5;50;54,4\n");

    List<ReadRow> rows = file.plan(file.guess()).rows();

    assertThat(SwatchWords.sentence("first", rows.get(0).fault().orElseThrow())).contains(told);
    assertThat(rows.get(1).reading()).isPresent();
  }

  /** Where a sample lies on the sheet is no colour. */
  @Test
  void xAndYWithoutZAreNotRead() throws Exception {
    ReadingFile file = read("name;x;y;L*;a*;b*\ngrey;3;7;50;0;0\n");

    assertThat(file.guess().isXyz()).isFalse();
    assertThat(colour(file, file.guess())).isEqualTo(new Lab(50, 0, 0));
  }

  private static void assertGrey(ReadingFile file, ReadingMapping mapping) {
    Lab grey = colour(file, mapping);
    assertThat(grey.l()).isCloseTo(76.069, within(0.002));
    assertThat(grey.chroma()).isLessThan(0.05);
  }

  private static Lab colour(ReadingFile file, ReadingMapping mapping) {
    return file.plan(mapping).rows().get(0).reading().orElseThrow().lab();
  }

  private static ReadingFile read(String text) throws TableFaultException {
    return ReadingFile.read(text.getBytes(StandardCharsets.UTF_8));
  }
}
