package org.panwright.swatch.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Bands;
import org.panwright.colour.Lab;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.file.ReadingMapping.Scale;
import org.panwright.swatch.table.TableFaultException;
import org.panwright.words.SwatchWords;

/**
 * Files with a line for each wavelength and a column for each sample. The first sample is the
 * straight line R = nm / 1000, the second half of it; no resampling by straight lines changes them.
 */
class TurnedTableTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rising             | 380 | 730 | 10  | nm               | ;  | SHARE   | false",
        "falling            | 730 | 380 | -10 | nm               | ;  | SHARE   | true",
        "one by one         | 360 | 780 | 1   | Wavelength (nm)  | ,  | SHARE   | false",
        "fine and falling   | 780 | 360 | -5  | λ                | ;  | PERCENT | true",
        "wide               | 400 | 700 | 20  | ''               | ,  | PERCENT | false",
        "with the unit      | 400 | 700 | 10  | Wellenlänge [nm] | ;  | PERCENT | true"
      })
  void columnsAreSamples(
      String what,
      int from,
      int to,
      int step,
      String head,
      String separator,
      Scale scale,
      boolean comma)
      throws Exception {
    double unit = scale == Scale.PERCENT ? 10 : 1000;
    String text =
        head
            + separator
            + "full"
            + separator
            + "a wash\n"
            + lines(
                nm(from, to, step),
                nm -> {
                  String line =
                      what.equals("with the unit") ? nm + " nm" : comma ? nm + ".0" : "" + nm;
                  String cells = line + "|" + nm / unit + "|" + nm / unit / 2;
                  return (comma ? cells.replace('.', ',') : cells).replace("|", separator);
                });

    ReadingFile file = read(text);

    assertThat(file.guess().scale()).isEqualTo(scale);
    List<ReadRow> rows = file.plan(file.guess()).rows();
    assertThat(rows).extracting(ReadRow::name).containsExactly("full", "a wash");
    assertLine(rows.get(0), 1);
    assertLine(rows.get(1), 0.5);
  }

  /** The commonest of all: one sample a file, with lines of the instrument above. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Wavelength (nm)        | Reflectance (%) | PERCENT",
        "nm                     | %R              | PERCENT",
        "nm                     | wash of 25 %    | SHARE"
      })
  void oneSampleIsEnough(String head, String sample, Scale scale) throws Exception {
    ReadingFile file =
        read(
            "Blue\n\nAperture: 4 mm\n"
                + head
                + ";"
                + sample
                + "\n"
                + lines(nm(380, 730, 10), nm -> nm + ";0,9"));

    assertThat(file.guess().scale()).isEqualTo(scale);
    ReadRow row = file.plan(file.guess()).rows().get(0);
    assertThat(row.name()).isEqualTo(sample);
    assertThat(row.reading().orElseThrow().reflectance().at(0))
        .isCloseTo(scale == Scale.PERCENT ? 0.009 : 0.9, within(1e-12));
  }

  /** Samples read twice go by one name; what else stands above and below is kept apart. */
  @Test
  void otherLinesAreColumnsOfTheirOwn() throws Exception {
    ReadingFile file =
        read(
            "sample,full,full,\ndate,1 May,1 May,\nload,1,0.25,\n"
                + lines(nm(400, 700, 10), nm -> nm + "," + nm / 1000.0 + ",,")
                    .replaceAll(",,\n", ",0.5,\n")
                + "L*,40,41,\na*,1,2,\nb*,-3,-4,\n");

    List<ReadRow> spectra = file.plan(file.guess()).rows();
    List<ReadRow> colours =
        file.plan(file.guess().with(ReadingField.FIRST, Optional.empty())).rows();

    assertThat(spectra).extracting(ReadRow::name).containsExactly("full", "full");
    assertThat(spectra).extracting(row -> row.amount().orElseThrow()).containsExactly(1.0, 0.25);
    assertLine(spectra.get(0), 1);
    assertThat(colours.get(1).reading()).contains(new Reading.OfColour(new Lab(41, 2, -4)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "above 1  | 1.2   | line 4, column two: 1.2 is above 1.",
        "negative | -0.1  | line 4, column two: -0.1 is below 0.",
        "a word   | dark  | line 4, column two: “dark” is no number.",
        "not one  | NaN   | line 4, column two: “NaN” is no number.",
        "empty    | ''    | line 4, column two: the cell is empty."
      })
  void aSampleThatCannotBeIsToldByLineAndColumn(String what, String cell, String told)
      throws Exception {
    ReadingFile file =
        read(
            "nm;one;two\n"
                + lines(nm(400, 700, 10), nm -> nm + ";0.4;" + (nm == 420 ? cell : "0.2")));

    List<ReadRow> rows = file.plan(file.guess()).rows();

    assertThat(rows.get(0).reading()).isPresent();
    assertThat(SwatchWords.sentence("two", rows.get(1).fault().orElseThrow())).contains(told);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "mistyped | 5l0 | line 13, column nm: “5l0” is no number.",
        "empty    | ''  | line 13, column nm: the cell is empty.",
        "twice    | 500 | line 13: 500 does not follow in wavelength.",
        "jumping  | 610 | line 14: 520 does not follow in wavelength."
      })
  void aWavelengthThatCannotBeIsToldByItsLine(String what, String cell, String told) {
    TableFaultException broken =
        catchThrowableOfType(
            TableFaultException.class,
            () ->
                read(
                    "nm;one\n"
                        + lines(nm(400, 700, 10), nm -> (nm == 510 ? cell : "" + nm) + ";0.4")));

    assertThat(SwatchWords.sentence("file", broken.fault())).contains(told);
  }

  /** Numbers of samples are no wavelengths where the heads say what the columns are. */
  @Test
  void numbersOfSamplesAreNotTakenForWavelengths() throws Exception {
    ReadingFile file = read("id,L*,a*,b*\n" + lines(nm(210, 500, 10), nm -> nm + ",50,10,-10"));

    assertThat(file.table().isTurned()).isFalse();
    assertThat(file.plan(file.guess()).usable()).hasSize(30);
  }

  private static void assertLine(ReadRow row, double factor) {
    assertThat(row.fault()).isEmpty();
    for (int band = 4; band < 30; band++) {
      assertThat(row.reading().orElseThrow().reflectance().at(band))
          .isCloseTo(factor * Bands.wavelengthNm(band) / 1000.0, within(1e-9));
    }
  }

  private static List<Integer> nm(int from, int to, int step) {
    return IntStream.iterate(from, nm -> step > 0 ? nm <= to : nm >= to, nm -> nm + step)
        .boxed()
        .toList();
  }

  private static String lines(List<Integer> nm, IntFunction<String> line) {
    return nm.stream().map(line::apply).map(text -> text + "\n").collect(Collectors.joining());
  }

  private static ReadingFile read(String text) throws TableFaultException {
    return ReadingFile.read(text.getBytes(StandardCharsets.UTF_8));
  }
}
