package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.analysis.arrange.FitCheck;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.Purchase;
import org.panwright.analysis.fill.Sharing;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Box;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.DateSpan;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Filling;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.PanKind;
import org.panwright.kit.Remainder;
import org.panwright.kit.Stock;
import org.panwright.kit.StockEdit;
import org.panwright.kit.Tube;
import org.panwright.kit.Well;

class FillWordsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final Tube TUBE =
      new Tube(
          "t", "blue", 5, new Remainder.ByVolume(5), OptionalDouble.empty(), Optional.empty(), "");
  private static final Kit KIT = new StockEdit.AddTube(TUBE).apply(ThreePaintKit.kit());
  private static final String BOX_ID = KIT.boxes().get(0).id();

  static Stream<Arguments> edits() {
    FilledWell filled = new FilledWell(BOX_ID, "w2", "blue", DAY, 1, 1);
    Box shared = BoxPlan.ofHalfPans(1, 2, 0).box("b");
    return Stream.of(
        Arguments.of(new StockEdit.AddTube(TUBE), "add a tube of blue"),
        Arguments.of(new StockEdit.ChangeTube(TUBE), "change the tube of blue"),
        Arguments.of(new StockEdit.RemoveTube("t"), "remove the tube of blue"),
        Arguments.of(new StockEdit.SetCurrency("shells"), "change the currency"),
        Arguments.of(new StockEdit.SetPans(PanKind.USUAL), "change the kinds of pans"),
        Arguments.of(new StockEdit.SetPractice(FillPractice.USUAL), "change how pans are filled"),
        Arguments.of(
            new StockEdit.SetTolerance(FitTolerance.USUAL), "change how exactly pans must fit"),
        Arguments.of(
            new StockEdit.FillWells(List.of(filled), List.of(), Map.of(), DAY), "fill well 2"),
        Arguments.of(
            new StockEdit.FillWells(List.of(filled), List.of(filled), Map.of(), DAY),
            "fill 2 wells"),
        Arguments.of(new StockEdit.SetFilled(BOX_ID, "w2", Optional.empty()), "clean out well 2"),
        Arguments.of(
            new StockEdit.SetFilled(BOX_ID, "w2", Optional.of(filled)), "say what is in well 2"),
        Arguments.of(
            new StockEdit.WearDown("gone", BOX_ID, Map.of()),
            "take the paint of an outing out of the wells"),
        Arguments.of(new StockEdit.ExchangePans(List.of(filled)), "exchange the pan of well 2"),
        Arguments.of(new StockEdit.CleanAside(BOX_ID, "w2", "blue"), "clean out the pan of blue"),
        Arguments.of(new StockEdit.AddSharedBox(shared, List.of()), "add box 2 half pans"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("edits")
  void anEditOfTheStockIsSaidInAFewWords(Edit edit, String words) {
    assertThat(EditWords.of(edit, KIT)).isEqualTo(words);
  }

  @Test
  void everyKindOfEditOfTheStockIsInTheTable() {
    assertThat(edits().map(row -> row.get()[0].getClass().getSimpleName()).distinct())
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(StockEdit.class.getPermittedSubclasses()).map(Class::getSimpleName).toList());
  }

  @ParameterizedTest(name = "{0} days: {1}")
  @CsvSource({
    "0,   today",
    "1,   yesterday",
    "59,  59 days ago",
    "90,  3 months ago",
    "800, 2 years ago",
    "-3,  dated ahead of today"
  })
  void anAgeIsSaidAsOneWouldSayIt(long days, String words) {
    assertThat(FillWords.age(OptionalLong.of(days))).isEqualTo(words);
  }

  @Test
  void oneWellAndOnePaintAreNotCountedAsSeveral() {
    Lineup lineup = KIT.lineups().get(0);
    Lineup one = new Lineup("one", "one", BOX_ID, Map.of());
    Well well = KIT.boxOf(lineup).wells().get(0);
    Kit kit =
        new Edit.AddLineup(one.with(well.id(), Optional.of(new Filling("blue", Fill.FULL))))
            .apply(KIT);
    assertThat(FillWords.summary(FillPlan.of(kit, List.of("one"), Sharing.EVENLY), kit).get(0))
        .contains("into one well and");
  }

  @Test
  void whatToBuyNamesSizesAndCost() {
    Purchase purchase =
        new Purchase(
            List.of(
                new Purchase.Item(15, OptionalDouble.of(12), 1),
                new Purchase.Item(5, OptionalDouble.of(6.5), 2)));
    Kit kit = KIT.withStock(KIT.stock().withCurrency("shells"));
    assertThat(FillWords.purchase(purchase, kit))
        .startsWith("1 tube of 15 ml and 2 tubes of 5 ml for 25")
        .endsWith("shells");
  }

  /** A half pan is 19 × 15.5 × 10.5 mm: in a well of 16 × 22 mm it has 3 mm to spare lengthwise. */
  @Test
  void aLoosePanAndAProudOneAreToldWithTheirMillimetres() {
    Box plain = BoxPlan.ofHalfPans(1, 1, 0).box("b");
    Box box =
        new Box(
            "b",
            "b",
            40,
            40,
            40,
            40,
            List.of(
                new org.panwright.kit.Well(
                    "w", "1", org.panwright.kit.WellKind.HALF_PAN, 0, 0, 16, 22)),
            OptionalDouble.of(9.5),
            List.of());
    assertThat(FitWords.sentences(FitCheck.of(box, Stock.NONE), box, Stock.NONE))
        .containsExactly(
            "Well 1: the half pan sits loose, with 3 mm to spare lengthwise and stands 1 mm above"
                + " the rim.");
    assertThat(FitWords.sentences(FitCheck.of(plain, Stock.NONE), plain, Stock.NONE))
        .containsExactly(FitWords.ALL_FIT, FitWords.NO_DEPTH);
  }

  @Test
  void datesOfAKitReachFromTheLastCenturyToTheNext() {
    assertThat(DateSpan.holds(LocalDate.of(9999, 1, 1))).isFalse();
    assertThat(DateSpan.holds(DAY)).isTrue();
  }
}
