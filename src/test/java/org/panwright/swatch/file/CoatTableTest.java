package org.panwright.swatch.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Lab;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

class CoatTableTest {
  private static final String HEAD = "sample,paint_a,ml_a,paint_b,ml_b," + wavelengths();

  @Test
  void readsPaperCoatsAndMixes() throws TableFaultException {
    CoatTable table =
        read(
            List.of(
                "# invented readings",
                HEAD,
                "paper,,,,," + readings("0.9"),
                "first,red earth,0.5,,," + readings("0.25"),
                "second,\"red, \"\"earth\"\"\",0.5,white,0.25," + readings("0.5")));

    assertThat(table.paper()).isPresent();
    assertThat(table.coats()).hasSize(2);
    assertThat(table.coats().get(0).paints()).containsExactly(new PaintLoad("red earth", 0.5));
    assertThat(table.coats().get(1).paints())
        .containsExactly(new PaintLoad("red, \"earth\"", 0.5), new PaintLoad("white", 0.25));
    assertThat(table.coats().get(1).reading().reflectance().at(20)).isEqualTo(0.5);
    assertThat(table.swatches().paints()).containsExactly("red earth", "red, \"earth\"", "white");
  }

  @Test
  void percentIsKnownByItsMiddle() throws TableFaultException {
    CoatTable table =
        read(List.of(HEAD, "paper,,,,," + readings("90"), "a,x,1,,," + readings("25")));

    assertThat(table.coats().get(0).reading().reflectance().at(3)).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void coloursAloneAreEnough() throws TableFaultException {
    CoatTable table =
        read(List.of("sample,paint_a,ml_a,LAB_L,LAB_A,LAB_B", "paper,,,95,0,2", "a,x,1,40,30,-20"));

    assertThat(table.coats().get(0).reading())
        .isEqualTo(new Reading.OfColour(new Lab(40, 30, -20)));
  }

  @Test
  void anAmountNobodyKnowsIsInDoubt() throws TableFaultException {
    String colours = ",LAB_L,LAB_A,LAB_B";
    SwatchSet empty =
        read(List.of(
                "sample,paint_a,ml_a" + colours,
                "paper,,,95,0,2",
                "a,x,,40,30,-20",
                "b,x,0.5,60,20,-12"))
            .swatches();
    assertThat(empty.swatches().get(0).loadDoubt()).isPositive();
    assertThat(empty.swatches().get(1).loadDoubt()).isZero();
    SwatchSet without =
        read(List.of("sample,paint_a" + colours, "paper,,95,0,2", "a,x,40,30,-20")).swatches();
    assertThat(without.swatches().get(0).loadDoubt()).isPositive();
  }

  static Stream<Object[]> broken() {
    String good = "a,x,1,,," + readings("0.5");
    return Stream.of(
        broken("nothing", new TableFault.NoTable()),
        broken("only a head", new TableFault.NoTable(), HEAD),
        broken(
            "not a number",
            new TableFault.NotANumber(2, "R400", "dark"),
            HEAD,
            good.replaceFirst("0.5,0.5,0.5", "0.5,0.5,dark")),
        broken(
            "not a number in words",
            new TableFault.NotANumber(2, "R380", "NaN"),
            HEAD,
            good.replaceFirst("0.5", "NaN")),
        broken(
            "negative",
            new TableFault.OutOfRange(3, "R390", 0, 1, -0.01),
            HEAD,
            good,
            good.replaceFirst("0.5,0.5", "0.5,-0.01")),
        broken(
            "over 1",
            new TableFault.OutOfRange(2, "R380", 0, 1, 1.2),
            HEAD,
            good.replaceFirst("0.5", "1.2")),
        broken(
            "one value in percent",
            new TableFault.OutOfRange(2, "R380", 0, 1, 50),
            HEAD,
            good.replaceFirst("0.5", "50")),
        broken(
            "over 100 percent",
            new TableFault.OutOfRange(2, "R380", 0, 100, 120),
            HEAD,
            "a,x,1,,," + readings("50").replaceFirst("50", "120")),
        broken(
            "a missing reading",
            new TableFault.EmptyCell(2, "R380"),
            HEAD,
            good.replaceFirst("0.5", "")),
        broken("a missing cell", new TableFault.WrongCellCount(2, 41, 40), HEAD, good.substring(2)),
        broken(
            "load zero",
            new TableFault.OutOfRange(2, "ml_a", 0, Double.POSITIVE_INFINITY, 0),
            HEAD,
            good.replaceFirst("x,1", "x,0")),
        broken(
            "an amount of nothing",
            new TableFault.AmountWithoutPaint(2, "ml_b"),
            HEAD,
            good.replaceFirst("x,1,,", "x,1,,2")),
        broken(
            "twice the same paint",
            new TableFault.PaintTwice(2, "x"),
            HEAD,
            good.replaceFirst("x,1,,", "x,1,x,2")),
        broken(
            "the same paint in capitals",
            new TableFault.PaintTwice(2, "X"),
            HEAD,
            good.replaceFirst("x,1,,", "x,1,X,2")),
        broken(
            "two papers",
            new TableFault.PaperTwice(3),
            HEAD,
            "paper,,,,," + readings("0.9"),
            "paper,,,,," + readings("0.8")),
        broken(
            "no sample column",
            new TableFault.NoColumn("sample"),
            HEAD.replace("sample", "name"),
            good),
        broken(
            "a column twice",
            new TableFault.ColumnTwice("R380"),
            HEAD.replace("R390", "R380"),
            good),
        broken(
            "wavelengths in disorder",
            new TableFault.BandsOutOfOrder("R395"),
            HEAD.replace("R410", "R395"),
            good),
        broken("no readings", new TableFault.NoReadings(), "sample,paint_a,ml_a", "a,x,1"),
        broken(
            "lightness out of range",
            new TableFault.OutOfRange(2, "LAB_L", 0.1, 99.9, 120),
            "sample,paint_a,ml_a,LAB_L,LAB_A,LAB_B",
            "a,x,1,120,0,0"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void refusesWithLineAndColumn(String name, TableFault fault, List<String> lines) {
    assertThatThrownBy(() -> read(lines))
        .isInstanceOfSatisfying(
            TableFaultException.class, e -> assertThat(e.fault()).isEqualTo(fault));
  }

  @Test
  void anAmountNobodyKnowsIsAUsualCoatOfTheFilesUnit() throws TableFaultException {
    // √(0.02 · 0.08) = 0.04
    CoatTable table =
        read(
            List.of(
                HEAD,
                "paper,,,,," + readings("0.9"),
                "a,x,0.02,,," + readings("0.5"),
                "b,x,0.08,,," + readings("0.3"),
                "c,x,,,," + readings("0.4"),
                "d,x,0.5,y,0.5," + readings("0.2")));

    assertThat(table.usualLoad()).isCloseTo(0.04, within(1e-12));
    assertThat(table.unmeasured()).isEqualTo(1);
    assertThat(table.coats().get(2).paints().get(0).load()).isCloseTo(0.04, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(strings = {"g", "MG", "amount", "load", "parts"})
  void amountsMayBeInOtherUnits(String unit) throws TableFaultException {
    CoatTable table =
        read(
            List.of(
                HEAD.replace("ml_", unit + "_"),
                "a,x,3,y,2," + readings("0.5"),
                "b,x,4,,," + readings("0.3")));

    assertThat(table.coats().get(0).paints())
        .containsExactly(new PaintLoad("x", 3), new PaintLoad("y", 2));
    assertThat(table.unmeasured()).isZero();
  }

  @Test
  void swatchesNeedPaper() throws TableFaultException {
    CoatTable table = read(List.of(HEAD, "a,x,1,,," + readings("0.5")));

    assertThatThrownBy(table::swatches)
        .isInstanceOfSatisfying(
            TableFaultException.class,
            e -> assertThat(e.fault()).isEqualTo(new TableFault.NoPaper()));
  }

  private static CoatTable read(List<String> lines) throws TableFaultException {
    return CoatTable.read(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
  }

  private static Object[] broken(String name, TableFault fault, String... lines) {
    return new Object[] {name, fault, new ArrayList<>(List.of(lines))};
  }

  private static String wavelengths() {
    return IntStream.range(0, 36)
        .mapToObj(i -> "R" + (380 + 10 * i))
        .collect(Collectors.joining(","));
  }

  private static String readings(String value) {
    return IntStream.range(0, 36).mapToObj(i -> value).collect(Collectors.joining(","));
  }
}
