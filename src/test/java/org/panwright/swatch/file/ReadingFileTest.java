package org.panwright.swatch.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Bands;
import org.panwright.colour.Lab;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.file.ReadingMapping.Scale;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;
import org.panwright.words.SwatchWords;

/**
 * Files of readings as instruments and spreadsheets of all countries write them. Every file holds
 * the same straight line, R = nm / 1000, which no resampling by straight lines changes.
 */
class ReadingFileTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "rising, 400, 700, 10",
    "falling, 700, 400, -10",
    "falling and fine, 780, 360, -5",
    "wide, 400, 700, 20",
    "one by one, 380, 730, 1"
  })
  void wavelengthsMayRiseOrFall(String what, int from, int to, int step) throws Exception {
    assertLine(read(table(nm(from, to, step), ",", nm -> "R" + nm, nm -> "" + nm / 1000.0)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "plain            | R%d              | SHARE",
        "bare             | %d               | SHARE",
        "with a unit      | %d nm            | SHARE",
        "in words         | Reflectance at %d nm | SHARE",
        "of the trade     | SPECTRAL_PCT_%d  | PERCENT",
        "percent by sign  | %d nm [%%]       | PERCENT",
        "percent by value | %d               | PERCENT"
      })
  void headsAreKnownInManySpellings(String what, String head, Scale scale) throws Exception {
    double unit = scale == Scale.PERCENT ? 10 : 1000;
    ReadingFile file =
        read(table(nm(380, 730, 10), ",", head::formatted, nm -> Double.toString(nm / unit)));

    assertThat(file.guess().scale()).isEqualTo(scale);
    assertLine(file);
  }

  /** Titles, what an instrument says of itself, and the first line some spreadsheets write. */
  @ParameterizedTest
  @ValueSource(
      strings = {"sep=,", "Blue, second box", "Readings\n\nLight: D65\n# aperture 4 mm", "\"Blue"})
  void linesAboveTheTableAreNotPartOfIt(String above) throws Exception {
    ReadingFile file =
        read(above + "\n" + table(nm(380, 730, 10), ",", nm -> "R" + nm, nm -> "" + nm / 1000.0));

    assertLine(file);
    assertThat(file.plan(file.guess()).rows().get(0).line())
        .isEqualTo(above.split("\n", -1).length + 2);
  }

  @Test
  void numbersOfProgramsAreNotTakenForReadings() throws Exception {
    ReadingFile file = read("name,L*,a*,b*\na,0x1p5,3,-5\nb,40,3d,-5\nc,40,3,\u22125\n");
    ReadingPlan plan = file.plan(file.guess());

    assertThat(plan.rows().get(0).fault()).contains(new TableFault.NotANumber(2, "L*", "0x1p5"));
    assertThat(plan.rows().get(1).fault()).contains(new TableFault.NotANumber(3, "a*", "3d"));
    assertThat(plan.rows().get(2).reading()).contains(new Reading.OfColour(new Lab(40, 3, -5)));
  }

  /** A dark sample in percent stays below 1.5, but its heads say what it is. */
  @Test
  void aHeadThatSaysPercentIsBelieved() throws Exception {
    ReadingFile file = read(table(nm(380, 730, 10), ",", "R%d %%"::formatted, nm -> "1.2"));

    assertThat(reflectance(file, 10)).isCloseTo(0.012, within(1e-12));
  }

  @ParameterizedTest(name = "{0} between cells, decimal commas {1}")
  @CsvSource({"';', true", "';', false", "'\t', true", "'\t', false", "',', false"})
  void separatorsAndDecimalsOfAllCountries(String separator, boolean comma) throws Exception {
    assertLine(
        read(
            table(
                nm(400, 700, 10),
                separator,
                nm -> "R" + nm,
                nm -> comma ? ("" + nm / 1000.0).replace('.', ',') : "" + nm / 1000.0)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "UTF-8, '', lf",
    "UTF-8, '\uFEFF', crlf",
    "UTF-16LE, '\uFEFF', crlf",
    "UTF-16BE, '\uFEFF', lf",
    "windows-1252, '', crlf",
    "UTF-8, '', cr"
  })
  void encodingsMarksAndLineEnds(String charset, String mark, String ends) throws Exception {
    String text =
        table(nm(400, 700, 10), ";", nm -> "R" + nm, nm -> "" + nm / 1000.0)
            .replace("\n", ends.equals("lf") ? "\n" : ends.equals("cr") ? "\r" : "\r\n");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write((mark + text).getBytes(Charset.forName(charset)));

    ReadingFile file = ReadingFile.read(bytes.toByteArray());

    assertLine(file);
    assertThat(file.plan(file.guess()).rows().get(0).name()).isEqualTo("Grün, voll");
  }

  /** The same of the trade's own form: falling, decimal commas, Mac line ends, UTF-16. */
  @Test
  void theTextFormOfTheTradeComesInAllOfThemToo() throws Exception {
    List<Integer> nm = nm(730, 380, -10);
    String text =
        String.join(
            "\r",
            "\uFEFFCGATS.17",
            "BEGIN_DATA_FORMAT",
            "SAMPLE_NAME\t"
                + nm.stream().map(at -> "SPECTRAL_NM" + at).collect(Collectors.joining("\t")),
            "END_DATA_FORMAT",
            "BEGIN_DATA",
            "\"Grün, voll\"\t"
                + nm.stream()
                    .map(at -> ("" + at / 10.0).replace('.', ','))
                    .collect(Collectors.joining("\t")),
            "END_DATA");

    assertLine(ReadingFile.read(text.getBytes(StandardCharsets.UTF_16LE)));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "over 1    | 1.02 | line 2, column R400: 1.02 is above 1.",
        "negative  | -0.1 | line 2, column R400: -0.1 is below 0.",
        "NaN       | NaN  | line 2, column R400: “NaN” is no number.",
        "infinite  | 1e999 | line 2, column R400: “1e999” is no number.",
        "a word    | over | line 2, column R400: “over” is no number.",
        "empty     | ''   | line 2, column R400: the cell is empty."
      })
  void aRowThatCannotBeIsToldAndTheOthersStay(String what, String cell, String told)
      throws Exception {
    String good = table(nm(400, 700, 10), ",", nm -> "R" + nm, nm -> "" + nm / 1000.0);
    String row = good.lines().skip(1).findFirst().orElseThrow();
    ReadingFile file = read(good.replaceFirst("0\\.4,", cell + ",") + row + "\n");

    List<ReadRow> rows = file.plan(file.guess()).rows();

    assertThat(rows).hasSize(2);
    assertThat(rows.get(0).reading()).isEmpty();
    assertThat(SwatchWords.sentence("file", rows.get(0).fault().orElseThrow()))
        .contains(told)
        .endsWith("or leave the row out.");
    assertThat(rows.get(1).reading()).isPresent();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "from 450    | 450 | 730 | 10 | covers 450–730 nm",
        "to 650      | 380 | 650 | 10 | covers 380–650 nm",
        "far apart   | 400 | 700 | 30 | nothing between 400 and 430 nm"
      })
  void bandsThatAreMissingAreNamed(String what, int from, int to, int step, String told)
      throws Exception {
    ReadingFile file = read(table(nm(from, to, step), ",", nm -> "R" + nm, nm -> "" + nm / 1000.0));

    ReadingPlan plan = file.plan(file.guess());

    assertThat(plan.rows()).isEmpty();
    assertThat(SwatchWords.sentence("file", plan.fault().orElseThrow()))
        .contains(told)
        .contains("xport");
  }

  /** What the heads do not say the painter can: which columns, which wavelengths, which name. */
  @Test
  void columnsCanBeAssignedByHand() throws Exception {
    String heads =
        IntStream.rangeClosed(1, 31).mapToObj(i -> ";v" + i).collect(Collectors.joining());
    String values =
        nm(700, 400, -10).stream().map(nm -> ";" + nm / 10.0).collect(Collectors.joining());
    ReadingFile file = read("Device;Patch" + heads + "\nlab;full" + values + "\n");
    assertThat(file.plan(file.guess()).fault()).contains(new TableFault.NoReadings());

    ReadingMapping said =
        file.guess()
            .with(ReadingField.NAME, Optional.of(1))
            .with(ReadingField.FIRST, Optional.of(2))
            .with(ReadingField.LAST, Optional.of(32))
            .withWavelengths(700, 400)
            .with(Scale.PERCENT);

    assertThat(file.needsWavelengths(said)).isTrue();
    assertThat(file.plan(said).rows().get(0).name()).isEqualTo("full");
    assertThat(file.plan(said).wavelengths()).startsWith(400.0, 410.0).endsWith(700.0);
    assertThat(file.plan(said).rows().get(0).reading().orElseThrow().reflectance().at(10))
        .isCloseTo(Bands.wavelengthNm(10) / 1000.0, within(1e-9));
  }

  /** A neutral stays neutral whatever the light; a colour moves (ICC.1:2022, annex E). */
  @Test
  void theLightOfColoursCanBeSaid() throws Exception {
    ReadingFile file = read("Probe,CIE L*,CIE a*,CIE b*\ngrey,50,0,0\nred,50,60,20\n");
    ReadingPlan d65 = file.plan(file.guess().with(ReadingLight.D65));
    ReadingPlan d50 = file.plan(file.guess().with(ReadingLight.D50));

    assertThat(d65.rows().get(1).reading().orElseThrow().lab().a()).isEqualTo(60);
    assertThat(d50.rows().get(0).reading().orElseThrow().lab().chroma()).isLessThan(1e-6);
    assertThat(d50.rows().get(1).reading().orElseThrow().lab().a()).isNotCloseTo(60, within(0.2));
  }

  /** A reflectance and a colour in one file: the reflectance counts unless the painter says no. */
  @Test
  void theColourCanBeReadInsteadOfTheSpectrum() throws Exception {
    String spectral = table(nm(400, 700, 10), ",", nm -> "R" + nm, nm -> "" + nm / 1000.0);
    List<String> lines = spectral.lines().toList();
    ReadingFile file = read(lines.get(0) + ",L*,a*,b*\n" + lines.get(1) + ",40,1,2\n");

    assertThat(file.plan(file.guess()).wavelengths()).hasSize(31);
    ReadingPlan colour = file.plan(file.guess().with(ReadingField.FIRST, Optional.empty()));
    assertThat(colour.wavelengths()).isEmpty();
    assertThat(colour.rows().get(0).reading().orElseThrow().lab().l()).isEqualTo(40);
  }

  private static void assertLine(ReadingFile file) {
    assertThat(file.plan(file.guess()).rows()).allSatisfy(row -> assertThat(row.fault()).isEmpty());
    for (int band = 4; band < 30; band++) {
      assertThat(reflectance(file, band))
          .isCloseTo(Bands.wavelengthNm(band) / 1000.0, within(1e-9));
    }
  }

  private static double reflectance(ReadingFile file, int band) {
    ReadingPlan plan = file.plan(file.guess());
    return plan.rows().get(0).reading().orElseThrow().reflectance().at(band);
  }

  private static List<Integer> nm(int from, int to, int step) {
    return IntStream.iterate(from, nm -> step > 0 ? nm <= to : nm >= to, nm -> nm + step)
        .boxed()
        .toList();
  }

  private static String table(
      List<Integer> nm, String separator, IntFunction<String> head, IntFunction<String> value) {
    return "name"
        + separator
        + nm.stream().map(head::apply).collect(Collectors.joining(separator))
        + "\n\"Grün, voll\""
        + separator
        + nm.stream().map(value::apply).collect(Collectors.joining(separator))
        + "\n";
  }

  private static ReadingFile read(String text) throws TableFaultException {
    return ReadingFile.read(text.getBytes(StandardCharsets.UTF_8));
  }
}
