package org.panwright.swatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Lab;

/** Files written by hand after the layout that ANSI CGATS.17 and ISO 28178 describe. */
class CgatsTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({"nm, 0.25", "SPECTRAL_NM, 0.25", "SPECTRAL_NM_, 25", "R_, 25.0", "SPEC_, 0.25"})
  void readsReflectancesWhateverTheirColumnsAreCalled(String prefix, String value)
      throws TableFaultException {
    List<Cgats.Sample> samples = Cgats.read(file(prefix, value));

    assertThat(samples).hasSize(2);
    assertThat(samples.get(0).name()).isEqualTo("red earth, full");
    assertThat(samples.get(0).reading().reflectance().at(12)).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void readsPairsOfWavelengthAndPercent() throws TableFaultException {
    String columns =
        IntStream.range(0, 31).mapToObj(i -> "SPECTRAL_NM SPECTRAL_PCT").collect(joined());
    String row = IntStream.range(0, 31).mapToObj(i -> (400 + 10 * i) + ".0 40").collect(joined());

    List<Cgats.Sample> samples =
        Cgats.read(
            List.of(
                "CGATS.17",
                "BEGIN_DATA_FORMAT",
                "SAMPLE_ID " + columns,
                "END_DATA_FORMAT",
                "BEGIN_DATA",
                "7 " + row,
                "END_DATA"));

    assertThat(samples.get(0).name()).isEqualTo("7");
    assertThat(samples.get(0).reading().reflectance().at(0)).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void coloursAreUnderD50UnlessTheFileSaysD65() throws TableFaultException {
    // a white stays white under any light; a colour moves (ICC.1:2022, annex E)
    List<Cgats.Sample> d50 = Cgats.read(colours("ORIGINATOR \"hand\"", "96 0 0", "50 60 20"));
    List<Cgats.Sample> d65 =
        Cgats.read(colours("WEIGHTING_FUNCTION \"ILLUMINANT, D65\"", "96 0 0", "50 60 20"));

    assertThat(d65.get(1).reading().lab()).isEqualTo(new Lab(50, 60, 20));
    assertThat(d50.get(0).reading().lab().l()).isCloseTo(96, within(1e-6));
    assertThat(d50.get(0).reading().lab().a()).isCloseTo(0, within(1e-6));
    assertThat(d50.get(1).reading().lab().a()).isNotCloseTo(60, within(0.2));
  }

  @Test
  void aDecimalCommaIsAPoint() throws TableFaultException {
    List<Cgats.Sample> samples = Cgats.read(colours("OBSERVER \"D65\"", "96,5 0,25 -1,5"));

    assertThat(samples.get(0).reading().lab()).isEqualTo(new Lab(96.5, 0.25, -1.5));
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
    assertThatThrownBy(() -> Cgats.read(lines))
        .isInstanceOfSatisfying(
            TableFaultException.class, e -> assertThat(e.fault()).isEqualTo(fault));
  }

  private static java.util.stream.Collector<CharSequence, ?, String> joined() {
    return Collectors.joining(" ");
  }
}
