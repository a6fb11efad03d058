package org.panwright.swatch.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Lab;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/** Files written by hand after the layout that ANSI CGATS.17 and ISO 28178 describe. */
class CgatsTest {
  @ParameterizedTest(name = "{0}380")
  @CsvSource({
    "nm, 0.25",
    "SPECTRAL_NM, 0.25",
    "SPECTRAL_NM_, 25",
    "SPECTRAL_, 25",
    "R_, 25.0",
    "SPEC_, 0.25",
    "'', 0.25"
  })
  void readsReflectancesWhateverTheirColumnsAreCalled(String prefix, String value)
      throws TableFaultException {
    List<ReadRow> samples = rows(file(prefix, value));

    assertThat(samples).hasSize(2);
    assertThat(samples.get(0).name()).isEqualTo("red earth, full");
    assertThat(samples.get(0).reading().orElseThrow().reflectance().at(12))
        .isCloseTo(0.25, within(1e-12));
  }

  @Test
  void readsPairsOfWavelengthAndPercent() throws TableFaultException {
    String columns =
        IntStream.range(0, 31).mapToObj(i -> "SPECTRAL_NM SPECTRAL_PCT").collect(joined());
    String row = IntStream.range(0, 31).mapToObj(i -> (400 + 10 * i) + ".0 40").collect(joined());

    List<ReadRow> samples =
        rows(
            List.of(
                "CGATS.17",
                "BEGIN_DATA_FORMAT",
                "SAMPLE_ID " + columns,
                "END_DATA_FORMAT",
                "BEGIN_DATA",
                "7 " + row,
                "END_DATA"));

    assertThat(samples.get(0).name()).isEqualTo("7");
    assertThat(samples.get(0).reading().orElseThrow().reflectance().at(0))
        .isCloseTo(0.4, within(1e-12));
  }

  @Test
  void coloursAreUnderD50UnlessTheFileSaysD65() throws TableFaultException {
    // a white stays white under any light; a colour moves (ICC.1:2022, annex E)
    List<ReadRow> d50 = rows(colours("ORIGINATOR \"hand\"", "96 0 0", "50 60 20"));
    List<ReadRow> d65 =
        rows(colours("WEIGHTING_FUNCTION \"ILLUMINANT, D65\"", "96 0 0", "50 60 20"));

    assertThat(d65.get(1).reading().orElseThrow().lab()).isEqualTo(new Lab(50, 60, 20));
    assertThat(d50.get(0).reading().orElseThrow().lab().l()).isCloseTo(96, within(1e-6));
    assertThat(d50.get(0).reading().orElseThrow().lab().a()).isCloseTo(0, within(1e-6));
    assertThat(d50.get(1).reading().orElseThrow().lab().a()).isNotCloseTo(60, within(0.2));
  }

  @Test
  void aDecimalCommaIsAPoint() throws TableFaultException {
    List<ReadRow> samples = rows(colours("OBSERVER \"D65\"", "96,5 0,25 -1,5"));

    assertThat(samples.get(0).reading().orElseThrow().lab()).isEqualTo(new Lab(96.5, 0.25, -1.5));
  }

  @Test
  void refusesAFileCutShort() {
    List<String> whole = colours("ORIGINATOR \"hand\"", "96 0 0");

    assertFault(whole.subList(0, whole.size() - 1), new TableFault.CutShort(whole.size() - 1));
    assertFault(List.of("CGATS.17", "BEGIN_DATA_FORMAT"), new TableFault.CutShort(2));
  }

  @Test
  void refusesWhatIsNoTable() {
    assertFault(List.of("A letter", "about paint"), new TableFault.NoTable());
  }

  @Test
  void namesLineAndColumn() {
    assertFault(
        colours("ORIGINATOR \"hand\"", "96 0 0", "50 sixty 20"),
        new TableFault.NotANumber(7, "LAB_A", "sixty"));
    assertFault(colours("ORIGINATOR \"hand\"", "96 0"), new TableFault.WrongCellCount(6, 3, 2));
  }

  @Test
  void theLayoutOfTheStandardIsReadWhateverItsBlanksAndMarks() throws TableFaultException {
    // a byte order mark, tabs, remarks after cells, names with blanks and quotes, two tables
    List<ReadRow> samples =
        rows(
            List.of(
                "\uFEFFCGATS.17",
                "ORIGINATOR\t\"hand\"\t# a remark",
                "KEYWORD \"COAT\"",
                "NUMBER_OF_FIELDS 2",
                "BEGIN_DATA_FORMAT",
                "SAMPLE_ID COAT",
                "END_DATA_FORMAT",
                "NUMBER_OF_SETS 1",
                "BEGIN_DATA",
                "1 full",
                "END_DATA",
                "WEIGHTING_FUNCTION \"ILLUMINANT, D65\"",
                "NUMBER_OF_FIELDS 4",
                "BEGIN_DATA_FORMAT",
                "SAMPLE_ID\tLAB_L",
                "\tLAB_A\tLAB_B",
                "END_DATA_FORMAT",
                "NUMBER_OF_SETS\t2",
                "BEGIN_DATA",
                "\"blue, \"\"thin\"\" wash\"\t70,5\t-4\t-22   # by the window",
                "",
                "\"no. 2\"  31 12.25 -48",
                "END_DATA"));

    assertThat(samples)
        .containsExactly(
            row(20, "blue, \"thin\" wash", new Lab(70.5, -4, -22)),
            row(22, "no. 2", new Lab(31, 12.25, -48)));
  }

  @ParameterizedTest(name = "{0} to {1} by {2} nm")
  @CsvSource({"400, 700, 20", "380, 780, 5", "360, 750, 10", "380, 730, 1"})
  void anyRangeAndStepIsBroughtToTheBands(int from, int to, int step) throws TableFaultException {
    // a straight line stays what it is under any resampling by straight lines
    List<Integer> wavelengths =
        IntStream.iterate(from, nm -> nm <= to, nm -> nm + step).boxed().toList();
    List<ReadRow> samples =
        rows(
            List.of(
                "BEGIN_DATA_FORMAT",
                wavelengths.stream().map(nm -> "SPECTRAL_NM" + nm).collect(joined()),
                "END_DATA_FORMAT",
                "BEGIN_DATA",
                wavelengths.stream().map(nm -> Double.toString(nm / 10.0)).collect(joined()),
                "END_DATA"));
    for (int band : new int[] {4, 12, 20, 30}) {
      assertThat(samples.get(0).reading().orElseThrow().reflectance().at(band))
          .isCloseTo(org.panwright.colour.Bands.wavelengthNm(band) / 1000.0, within(1e-9));
    }
  }

  @Test
  void aTableOfReflectancesCountsBeforeOneOfColours() throws TableFaultException {
    List<String> both = new ArrayList<>(colours("", "50 0 0"));
    both.addAll(file("R_", "25.0"));

    assertThat(rows(both).get(0).reading().orElseThrow().reflectance().at(12))
        .isCloseTo(0.25, within(1e-12));
  }

  @Test
  void refusesOtherCountsThanAnnounced() {
    List<String> lines = new java.util.ArrayList<>(colours("NUMBER_OF_FIELDS 4", "96 0 0"));
    assertFault(lines, new TableFault.CountWrong(1, "NUMBER_OF_FIELDS", "4", 3));
    lines.set(0, "NUMBER_OF_SETS 2");
    assertFault(lines, new TableFault.CountWrong(1, "NUMBER_OF_SETS", "2", 1));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "over one, SPECTRAL_DEC, 1.2, 1",
    "negative, SPECTRAL_DEC, -0.1, 1",
    "over a hundred percent, SPECTRAL_PCT, 180, 100"
  })
  void refusesReflectancesThatCannotBe(String what, String prefix, double wrong, double most) {
    List<String> lines = file(prefix, most == 1 ? "0.25" : "25");
    List<String> broken = new java.util.ArrayList<>(lines);
    broken.set(10, lines.get(10).replaceFirst(most == 1 ? "0.25" : "25", Double.toString(wrong)));
    assertFault(broken, new TableFault.OutOfRange(11, prefix + "380", 0, most, wrong));
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "1e999", "--", "0.2.5"})
  void refusesWhatIsNoNumber(String cell) {
    List<String> broken = new java.util.ArrayList<>(file("SPECTRAL_NM", "0.25"));
    broken.set(9, broken.get(9).replaceFirst("0.25", cell));
    assertFault(broken, new TableFault.NotANumber(10, "SPECTRAL_NM380", cell));
  }

  @Test
  void refusesAColumnTwiceAndBandsMissing() {
    List<String> twice = new java.util.ArrayList<>(colours("ORIGINATOR x", "96 0 0 1"));
    twice.set(2, "LAB_L LAB_A LAB_B LAB_A");
    assertFault(twice, new TableFault.ColumnTwice("LAB_A"));
    List<String> few =
        List.of(
            "BEGIN_DATA_FORMAT",
            "SPECTRAL_NM450 SPECTRAL_NM470",
            "END_DATA_FORMAT",
            "BEGIN_DATA",
            "0.2 0.3",
            "END_DATA");
    assertFault(few, new TableFault.BandsMissing(450, 470));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "commas     | sample,LAB_L,LAB_A,LAB_B | full,40.5,-4,1",
        "semicolons | sample;LAB_L;LAB_A;LAB_B | full;40,5;-4;1"
      })
  void plainColumnsSayTheSame(String what, String columns, String row) throws TableFaultException {
    assertThat(rows(List.of("\uFEFF# by hand", columns, row)))
        .containsExactly(row(3, "full", new Lab(40.5, -4, 1)));
  }

  private static ReadRow row(int line, String name, Lab lab) {
    return new ReadRow(
        line,
        name,
        Optional.of(new Reading.OfColour(lab)),
        Optional.empty(),
        OptionalDouble.empty());
  }

  /** The rows as the file's own heads have them; the first fault, if there is any. */
  private static List<ReadRow> rows(List<String> lines) throws TableFaultException {
    ReadingFile file = ReadingFile.read(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    ReadingPlan plan = file.plan(file.guess());
    Optional<TableFault> fault =
        plan.fault()
            .or(() -> plan.rows().stream().flatMap(row -> row.fault().stream()).findFirst());
    if (fault.isPresent()) {
      throw new TableFaultException(fault.get());
    }
    return plan.rows();
  }

  private static List<String> file(String prefix, String value) {
    String columns =
        IntStream.range(0, 36).mapToObj(i -> prefix + (380 + 10 * i)).collect(joined());
    String row = IntStream.range(0, 36).mapToObj(i -> value).collect(joined());
    return List.of(
        "CGATS.17",
        "ORIGINATOR \"hand\"   # a remark",
        "",
        "NUMBER_OF_FIELDS 37",
        "BEGIN_DATA_FORMAT",
        "SAMPLE_NAME " + columns,
        "END_DATA_FORMAT",
        "NUMBER_OF_SETS 2",
        "BEGIN_DATA",
        "\"red earth, full\" " + row,
        "paper " + row,
        "END_DATA");
  }

  private static List<String> colours(String keyword, String... rows) {
    List<String> lines =
        new java.util.ArrayList<>(
            List.of(
                keyword,
                "BEGIN_DATA_FORMAT",
                "LAB_L LAB_A LAB_B",
                "END_DATA_FORMAT",
                "BEGIN_DATA"));
    lines.addAll(List.of(rows));
    lines.add("END_DATA");
    return lines;
  }

  private static void assertFault(List<String> lines, TableFault fault) {
    assertThatThrownBy(() -> rows(lines))
        .isInstanceOfSatisfying(
            TableFaultException.class, e -> assertThat(e.fault()).isEqualTo(fault));
  }

  private static java.util.stream.Collector<CharSequence, ?, String> joined() {
    return Collectors.joining(" ");
  }
}
