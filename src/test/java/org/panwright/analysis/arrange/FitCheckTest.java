package org.panwright.analysis.arrange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.kit.Box;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;

/** A half pan of 19 × 15.5 × 10.5 mm in wells of many sizes. */
class FitCheckTest {
  private static final Stock STOCK = Stock.NONE.withTolerance(new FitTolerance(0.5, 1.5));

  @ParameterizedTest(name = "well {0} x {1}: {2}, play {3} and {4}")
  @CsvSource({
    "16,   19.5, FITS,   0.5,  0.5",
    "19.5, 16,   FITS,   0.5,  0.5",
    "15.5, 19,   FITS,   0,    0",
    "17,   20.5, FITS,   1.5,  1.5",
    "17.1, 19,   LOOSE,  0,    1.6",
    "16,   21,   LOOSE,  2,    0.5",
    "15,   19,   TIGHT,  0,    -0.5",
    "16,   18.6, TIGHT,  -0.4, 0.5",
    "14.9, 19,   NOT_IN, 0,    -0.6",
    "40,   10,   NOT_IN, 21,   -5.5"
  })
  void aPanSitsAsItsPlaySays(
      double width, double height, FitCheck.Seat seat, double lengthPlay, double widthPlay) {
    FitCheck.WellFit fit = only(box(width, height, OptionalDouble.empty(), List.of()));
    assertThat(fit.seat()).isEqualTo(seat);
    assertThat(fit.lengthPlayMm()).isCloseTo(lengthPlay, within(1e-9));
    assertThat(fit.widthPlayMm()).isCloseTo(widthPlay, within(1e-9));
    assertThat(fit.proudMm()).as("depth unknown").isEmpty();
  }

  @Test
  void aPanHigherThanTheBoxIsDeepStandsProud() {
    assertThat(only(box(16, 19.5, OptionalDouble.of(9), List.of())).proudMm().getAsDouble())
        .isEqualTo(1.5);
    assertThat(only(box(16, 19.5, OptionalDouble.of(10.5), List.of())).standsProud()).isFalse();
  }

  @Test
  void aMagnetLiftsThePanThatStandsOnIt() {
    Fixture magnet = new Fixture("m", FixtureKind.MAGNET, false, 0, 0, 5, 5, 0.8);
    FitCheck.WellFit lifted = only(box(16, 19.5, OptionalDouble.of(11), List.of(magnet)));
    assertThat(lifted.raisedMm()).isEqualTo(0.8);
    assertThat(lifted.proudMm().getAsDouble()).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void aPanThatIsLargerThanTheBoxIsSaidToBe() {
    Well well = new Well("w", "1", WellKind.PAN, 0, 0, 20, 15);
    Box box = new Box("b", "b", 20, 15, 20, 15, List.of(well));
    FitCheck.WellFit fit = FitCheck.of(box, STOCK).wells().get(0);
    assertThat(fit.largerThanBox()).isTrue();
    assertThat(fit.seat()).isEqualTo(FitCheck.Seat.NOT_IN);
  }

  /** Common practice: a tin for twelve half pans holds 6 in a row, and by pressing 7. */
  @Test
  void aTinForTwelveHoldsSevenInARowByPressing() {
    Box tin = BoxPlan.ofHalfPans(2, 6, 0).box("tin");
    FitCheck.RowFit halves =
        FitCheck.of(tin, STOCK).rows().stream()
            .filter(row -> row.panId().equals(PanKind.HALF_ID))
            .findFirst()
            .orElseThrow();
    assertThat(halves.upright()).isEqualTo(6);
    assertThat(halves.pressed()).isEqualTo(7);
  }

  @Test
  void dabPlacesHoldNoPanUnlessToldSo() {
    Box box = BoxPlan.ofHalfPans(1, 1, 1).box("b");
    assertThat(FitCheck.of(box, STOCK).wells()).hasSize(1);
    Well dab = box.wells().get(1).withPan(Optional.of("quarter-small"));
    assertThat(FitCheck.of(box.withWells(List.of(dab)), STOCK).wells()).hasSize(1);
  }

  @Test
  void theUsualBoxesFitTheUsualPans() {
    assertThat(BoxPlan.ALL)
        .allSatisfy(box -> assertThat(FitCheck.of(box, Stock.NONE).wrong()).isEmpty());
  }

  private static Box box(
      double width, double height, OptionalDouble depth, List<Fixture> fixtures) {
    Well well = new Well("w", "1", WellKind.HALF_PAN, 0, 0, width, height);
    return new Box("b", "b", 60, 60, 60, 60, List.of(well), depth, fixtures);
  }

  private static FitCheck.WellFit only(Box box) {
    return FitCheck.of(box, STOCK).wells().get(0);
  }
}
