package org.panwright.analysis.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.analysis.outing.NextOuting;
import org.panwright.analysis.outing.Refill;
import org.panwright.analysis.outing.Wear;
import org.panwright.kit.Fill;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.StockEdit;
import org.panwright.kit.Tube;

/**
 * Fill plans worked out by hand. A full half pan of these kits is 1 ml of dry paint and takes 2 ml
 * wet, a half filled one half of that, a dab 0.25 and 0.5 ml.
 */
class FillPlanTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private static final double UNKNOWN = Double.NaN;

  @Test
  void eachWellAsksForWhatItsFillTakes() {
    FillPlan plan = plan(three(Stocks.tube("t", "blue", 15, 15, UNKNOWN)), "first", "second");
    assertThat(plan.wells())
        .extracting(PlannedWell::boxId, PlannedWell::wellId, PlannedWell::targetMl)
        .containsExactly(
            tuple("tin", "well-1", 1), tuple("tin", "dab-1", 0.25), tuple("slim", "well-2", 0.5));
    assertThat(plan.wells()).extracting(PlannedWell::needMl).containsExactly(2.0, 0.5, 1.0);
    assertThat(plan.wells()).extracting(PlannedWell::givenMl).containsExactly(2.0, 0.5, 1.0);
    assertThat(plan.tubes()).extracting(TubeDraw::afterMl).containsExactly(11.5);
    assertThat(plan.runningShort()).isEmpty();
  }

  /** 1.75 ml for 3.5: every well half as full as it should be. */
  @Test
  void scarcePaintIsSharedEvenly() {
    FillPlan plan = plan(three(Stocks.tube("t", "blue", 5, 1.75, UNKNOWN)), "first", "second");
    assertThat(plan.wells())
        .extracting(PlannedWell::givenMl)
        .usingElementComparator(FillPlanTest::compare)
        .containsExactly(1.0, 0.25, 0.5);
  }

  /** The same, the first lineup first: 2 for the full pan would be more than there is. */
  @Test
  void scarcePaintGoesToTheFirstLineupIfSoAsked() {
    Kit kit = three(Stocks.tube("t", "blue", 5, 1.75, UNKNOWN));
    FillPlan plan = FillPlan.of(kit, List.of("second", "first"), Sharing.IN_ORDER);
    assertThat(plan.wells()).extracting(PlannedWell::givenMl).containsExactly(1.0, 0.75, 0.0);
  }

  /** Level L with max(0, L − 0.5) + L · 0.25 + L · 0.5 = 0.5 · 1.0 is 4/7 ml dry. */
  @Test
  void aWellThatHoldsSomeAlreadyGetsLess() {
    Kit kit = three(Stocks.tube("t", "blue", 5, 1, UNKNOWN));
    kit = kit.withStock(kit.stock().filling(filled("tin", "well-1", "blue", 0.5)));
    FillPlan plan = plan(kit, "first", "second");
    double level = 4.0 / 7;
    assertThat(plan.wells())
        .extracting(PlannedWell::givenMl)
        .usingElementComparator(FillPlanTest::compare)
        .containsExactly(2 * (level - 0.5), 2 * 0.25 * level, 2 * 0.5 * level);
  }

  /**
   * A drop is 0.05 ml (20 to the millilitre, common practice). Half of the wet paint dries away: 1
   * ml less 0.02 lacks 0.04 wet, which is left out; less 0.03 it lacks 0.06, which is planned.
   */
  @Test
  void lessThanADropIsNotToppedUp() {
    Kit kit = three(Stocks.tube("t", "blue", 15, 15, UNKNOWN));
    Kit nearlyFull = kit.withStock(kit.stock().filling(filled("tin", "well-1", "blue", 0.98)));
    assertThat(plan(nearlyFull, "first").wells().get(0).needMl()).isEqualTo(0);
    Kit aDropLess = kit.withStock(kit.stock().filling(filled("tin", "well-1", "blue", 0.97)));
    assertThat(plan(aDropLess, "first").wells().get(0).needMl()).isCloseTo(0.06, EXACT);
  }

  /** 3.5 ml asked for: 3.46 in the tube lack 0.04, less than a drop; 3.44 lack 0.06. */
  @Test
  void noTubeIsBoughtForLessThanADrop() {
    FillPlan enough = plan(three(Stocks.tube("t", "blue", 15, 3.46, UNKNOWN)), "first", "second");
    assertThat(enough.runningShort()).isEmpty();
    FillPlan scarce = plan(three(Stocks.tube("t", "blue", 15, 3.44, UNKNOWN)), "first", "second");
    assertThat(scarce.runningShort()).hasSize(1);
  }

  /**
   * 1 ml at 1 a millilitre and 2 ml at 2: 3 used for 5; 0.5 short, for which 5 ml at 10 is
   * cheapest.
   */
  @Test
  void theCheaperTubeIsUsedFirstAndTheCheapestBought() {
    Kit kit = three(Stocks.tube("dear", "blue", 5, 2, 10), Stocks.tube("cheap", "blue", 15, 1, 15));
    FillPlan plan = plan(kit, "first", "second");
    assertThat(plan.tubes()).extracting(TubeDraw::tubeId).containsExactly("cheap", "dear");
    assertThat(plan.tubes()).extracting(TubeDraw::afterMl).containsExactly(0.0, 0.0);
    PaintDemand blue = plan.demand("blue").orElseThrow();
    assertThat(blue.shortMl()).isCloseTo(0.5, EXACT);
    assertThat(blue.usedCost().getAsDouble()).isCloseTo(5, EXACT);
    assertThat(blue.fillCost().getAsDouble()).isCloseTo(2, EXACT);
    assertThat(blue.purchase().orElseThrow().items())
        .containsExactly(new Purchase.Item(5, java.util.OptionalDouble.of(10), 1));
    assertThat(plan.purchaseCost().getAsDouble()).isEqualTo(10);
  }

  @Test
  void withoutAPriceTheLeastPaintToSpareIsBought() {
    Kit kit = Stocks.kit();
    for (int i = 1; i <= 4; i++) {
      kit = Stocks.with(kit, "first", "well-" + i, "blue", Fill.FULL);
    }
    Purchase purchase = plan(kit, "first").demand("blue").orElseThrow().purchase().orElseThrow();
    assertThat(purchase.ml()).as("8 ml short, sizes 5 and 15").isEqualTo(10);
    assertThat(purchase.cost()).isEmpty();
  }

  /** 2 ml wet, at most 1 ml a layer; pours of 1, the second on 0.5 ml dry: 1.5 of 2 ml. */
  @Test
  void layersAreThinAndStayBelowTheBrim() {
    FillPlan plan = plan(three(Stocks.tube("t", "blue", 15, 15, UNKNOWN)), "first");
    assertThat(plan.wells().get(0).layers().poursMl()).containsExactly(1.0, 1.0);
    assertThat(plan.wells().get(0).layers().dryingDays()).isEqualTo(4);
    assertThat(plan.wells().get(1).layers().poursMl()).as("a dab is one").containsExactly(0.5);
    assertThat(plan.dryingDays()).isEqualTo(4);
  }

  /**
   * 1.8 ml dry in a pan of 2, half lost: 3.6 ml wet. In n pours p the last stands at (n + 1) p / 2,
   * so 3.6 (n + 1) / 2 n ≤ 2 needs n ≥ 9.
   */
  @Test
  void aPanNearlyToTheBrimTakesMoreLayers() {
    FillPractice high = new FillPractice(0.9, 2, 1, 0.5, 0.25, 0.25);
    FillLayers layers = FillLayers.of(3.6, 0, 2, 3.6 / 2, high);
    assertThat(layers.poursMl()).hasSize(9).allSatisfy(p -> assertThat(p).isCloseTo(0.4, EXACT));
  }

  /**
   * Common practice: pans are filled in three layers; a half pan takes 2.5–3 ml of tube paint in
   * all.
   */
  @Test
  void theUsualPracticeGivesWhatIsUsual() {
    Kit kit = Stocks.with(Stocks.kit(), "first", "well-1", "blue", Fill.FULL);
    kit = kit.withStock(Stock.NONE.withTubes(List.of(Stocks.tube("t", "blue", 5, 5, UNKNOWN))));
    PlannedWell well = plan(kit, "first").wells().get(0);
    assertThat(well.needMl()).isBetween(2.45, 3.05);
    assertThat(well.layers().poursMl()).hasSize(3);
  }

  /** Published arithmetic of the trade: 5 ml are 2.5 half pans of 2 ml, 15 ml are 7.5. */
  @ParameterizedTest(name = "{0} ml")
  @CsvSource({"5, 2.5", "15, 7.5"})
  void aTubeGivesSoManyHalfPans(double size, double fills) {
    Kit kit = Stocks.with(Stocks.kit(), "first", "well-1", "blue", Fill.FULL);
    kit =
        kit.withStock(
            Stock.NONE
                .withPractice(new FillPractice(1, 1, 1, 0, 0.2, 0.3))
                .withTubes(List.of(Stocks.tube("t", "blue", size, size, UNKNOWN))));
    assertThat(plan(kit, "first").tubes().get(0).fills()).isCloseTo(fills, EXACT);
  }

  @Test
  void aPanWithAnotherPaintIsToBeExchanged() {
    Kit kit = three(Stocks.tube("t", "blue", 15, 15, UNKNOWN));
    kit = kit.withStock(kit.stock().filling(filled("tin", "well-1", "yellow", 0.8)));
    PlannedWell well = plan(kit, "first").wells().get(0);
    assertThat(well.otherPaintId()).hasValue("yellow");
    assertThat(well.needMl()).isEqualTo(2);
  }

  @Test
  void twoLineupsOfOneBoxShareAWellOrNeedASecondPan() {
    Kit kit = three(Stocks.tube("t", "blue", 15, 15, UNKNOWN));
    kit = Stocks.with(kit, "spare", "well-1", "blue", Fill.FULL);
    kit = Stocks.with(kit, "spare", "dab-1", "yellow", Fill.DAB);
    FillPlan plan = plan(kit, "first", "spare");
    assertThat(plan.wells()).extracting(PlannedWell::spare).containsExactly(false, false, true);
  }

  @Test
  void carryingOutFillsTheWellsAndEmptiesTheTubes() {
    Kit kit = three(Stocks.tube("a", "blue", 5, 1, 5), Stocks.tube("b", "blue", 5, 5, 10));
    FillPlan plan = plan(kit, "first", "second");
    Predicate<PlannedWell> all = well -> true;
    Stock after = plan.carriedOut(kit, Stocks.DAY, all).apply(kit).stock();
    assertThat(after.tubes()).extracting(Tube::leftMl).containsExactly(0.0, 2.5);
    assertThat(after.in("tin", "well-1").orElseThrow())
        .isEqualTo(new FilledWell("tin", "well-1", "blue", Stocks.DAY, 1, 1));
    assertThat(FillPlan.of(kit.withStock(after), plan.lineupIds(), Sharing.EVENLY).toFill())
        .as("nothing is left to do")
        .isEmpty();
  }

  @Test
  void carryingOutPartOfThePlanTakesOnlyThatPaint() {
    Kit kit = three(Stocks.tube("a", "blue", 5, 1, 5), Stocks.tube("b", "blue", 5, 5, 10));
    Stock after =
        plan(kit, "first", "second")
            .carriedOut(kit, Stocks.DAY, well -> well.boxId().equals("slim"))
            .apply(kit)
            .stock();
    assertThat(after.filled()).extracting(FilledWell::boxId).containsExactly("slim");
    assertThat(after.tubes()).extracting(Tube::leftMl).containsExactly(0.0, 5.0);
  }

  /**
   * Against trying every way of sharing in steps of half a millilitre: none leaves its least filled
   * well fuller.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void noOtherSharingFillsTheEmptiestWellMore(long seed) {
    Random random = new Random(seed);
    double[] held = new double[4];
    double[] target = new double[4];
    List<Sharing.Claim> claims = new java.util.ArrayList<>();
    for (int i = 0; i < 4; i++) {
      target[i] = 0.5 + random.nextInt(4) * 0.5;
      held[i] = random.nextInt(3) * 0.25;
      claims.add(new Sharing.Claim(held[i], target[i], 2));
    }
    double supply = 0.5 * random.nextInt(9);
    double[] shared = Sharing.EVENLY.share(claims, supply);
    double wanted = claims.stream().mapToDouble(c -> c.upTo(1)).sum();
    assertThat(java.util.Arrays.stream(shared).sum())
        .isCloseTo(Math.min(supply, wanted), within(1e-6));
    assertThat(least(held, target, shared))
        .isGreaterThanOrEqualTo(bestByTrying(held, target, new double[4], 0, supply) - 1e-9);
  }

  /** Against trying every way of drawing in steps of half a millilitre. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void noOtherWayOfDrawingCostsLess(long seed) {
    Random random = new Random(seed);
    Tube[] tubes = new Tube[3];
    for (int i = 0; i < 3; i++) {
      double left = 0.5 * (1 + random.nextInt(4));
      tubes[i] = Stocks.tube("t" + i, "blue", 5, left, 1 + random.nextInt(9));
    }
    Kit kit = Stocks.with(Stocks.kit(tubes), "first", "well-1", "blue", Fill.FULL);
    FillPlan plan = plan(kit, "first");
    double used = plan.tubes().stream().mapToDouble(TubeDraw::usedMl).sum();
    double least = Double.POSITIVE_INFINITY;
    for (double a = 0; a <= tubes[0].leftMl(); a += 0.5) {
      for (double b = 0; b <= tubes[1].leftMl(); b += 0.5) {
        double c = used - a - b;
        if (c >= 0 && c <= tubes[2].leftMl()) {
          least =
              Math.min(
                  least,
                  a * tubes[0].pricePerMl().getAsDouble()
                      + b * tubes[1].pricePerMl().getAsDouble()
                      + c * tubes[2].pricePerMl().getAsDouble());
        }
      }
    }
    assertThat(plan.usedCost().getAsDouble()).isCloseTo(least, EXACT);
  }

  @Test
  void wearTakesAPaintFromItsWellsInProportion() {
    Kit kit = three();
    kit =
        kit.withStock(
            kit.stock()
                .filling(filled("tin", "well-1", "blue", 0.9))
                .filling(filled("tin", "dab-1", "blue", 0.3)));
    Map<String, Double> worn =
        Wear.byWell(kit, kit.lineup("first").orElseThrow(), Map.of("blue", 0.4, "yellow", 1.0));
    assertThat(worn.get("well-1")).isCloseTo(0.3, EXACT);
    assertThat(worn.get("dab-1")).isCloseTo(0.1, EXACT);
    Outing quay = outing("quay", Optional.empty());
    kit = kit.withOutings(List.of(quay));
    Kit after =
        Wear.edit(kit, kit.lineup("first").orElseThrow(), quay, Map.of("blue", 9.0)).apply(kit);
    assertThat(after.outing("quay").orElseThrow().paintTaken()).isTrue();
    assertThat(after.stock().filled()).extracting(FilledWell::leftMl).containsExactly(0.0, 0.0);
  }

  @Test
  void anOutingWhosePaintWasTakenIsNeitherNextNorLast() {
    Kit kit = three();
    kit =
        kit.withOutings(
            List.of(
                outing("long ago", Optional.of(Stocks.DAY.minusDays(9))),
                outing("yesterday", Optional.of(Stocks.DAY.minusDays(1))),
                outing("some day", Optional.empty()),
                outing("today", Optional.of(Stocks.DAY))));
    assertThat(NextOuting.last(kit, "first", Stocks.DAY)).map(Outing::id).hasValue("yesterday");
    assertThat(NextOuting.of(kit, "first", Stocks.DAY)).map(Outing::id).hasValue("today");
    for (String id : List.of("yesterday", "today")) {
      kit = new StockEdit.WearDown(id, "tin", Map.of()).apply(kit);
    }
    assertThat(NextOuting.last(kit, "first", Stocks.DAY)).map(Outing::id).hasValue("long ago");
    assertThat(NextOuting.of(kit, "first", Stocks.DAY)).map(Outing::id).hasValue("some day");
  }

  private static Outing outing(String id, Optional<LocalDate> date) {
    return new Outing(id, id, date, "", Optional.of("first"), 2, 2, List.of());
  }

  /** The reserve is a quarter of what a well holds when full: 0.25 and 0.0625 ml. */
  @Test
  void wellsThatWouldNotLastAreToBeRefilled() {
    Kit kit = three();
    kit = kit.withStock(kit.stock().filling(filled("tin", "well-1", "blue", 0.5)));
    var lineup = kit.lineup("first").orElseThrow();
    assertThat(Refill.before(kit, lineup, Map.of()))
        .extracting(Refill::wellId, Refill::why)
        .containsExactly(tuple("dab-1", Refill.Why.EMPTY));
    assertThat(Refill.before(kit, lineup, Map.of("blue", 0.3)))
        .extracting(Refill::wellId, Refill::why)
        .containsExactly(
            tuple("well-1", Refill.Why.LOW_AFTERWARDS), tuple("dab-1", Refill.Why.EMPTY));
  }

  private static org.assertj.core.groups.Tuple tuple(Object... parts) {
    for (int i = 0; i < parts.length; i++) {
      if (parts[i] instanceof Integer whole) {
        parts[i] = whole.doubleValue();
      }
    }
    return org.assertj.core.groups.Tuple.tuple(parts);
  }

  private static int compare(Double a, Double b) {
    return Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b);
  }

  private static double bestByTrying(
      double[] held, double[] target, double[] given, int well, double left) {
    if (well == given.length) {
      return least(held, target, given);
    }
    double best = 0;
    for (double ml = 0; ml <= left + 1e-9; ml += 0.5) {
      given[well] = ml;
      best = Math.max(best, bestByTrying(held, target, given, well + 1, left - ml));
    }
    return best;
  }

  /** The lowest share of its target among the wells, a full one counting as full. */
  private static double least(double[] held, double[] target, double[] givenWet) {
    double least = 1;
    for (int i = 0; i < held.length; i++) {
      least = Math.min(least, (held[i] + givenWet[i] / 2) / target[i]);
    }
    return least;
  }

  private static FilledWell filled(String box, String well, String paint, double ml) {
    return new FilledWell(box, well, paint, Stocks.DAY, ml, ml);
  }

  /** A full half pan and a dab in the first box, a half filled one in the second, all blue. */
  private static Kit three(Tube... tubes) {
    Kit kit = Stocks.kit(tubes);
    kit = Stocks.with(kit, "first", "well-1", "blue", Fill.FULL);
    kit = Stocks.with(kit, "first", "dab-1", "blue", Fill.DAB);
    kit = Stocks.with(kit, "second", "well-2", "blue", Fill.HALF);
    assertThat(kit.stock().pan(PanKind.HALF_ID).orElseThrow().ml(0.5)).isEqualTo(1);
    return kit;
  }

  private static FillPlan plan(Kit kit, String... lineups) {
    return FillPlan.of(kit, List.of(lineups), Sharing.EVENLY);
  }
}
