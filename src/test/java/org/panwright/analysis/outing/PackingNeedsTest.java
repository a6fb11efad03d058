package org.panwright.analysis.outing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.kit.SheetSize;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.Shelf;
import org.panwright.paint.WashStrengths;

/** What an outing needs, against cases worked out by hand and against common practice. */
class PackingNeedsTest {
  /** The same in every band, so that a tint is as deep in one as in another. */
  private static final Paper PAPER = new Paper("flat", Spectrum.flat(0.85));

  private static final SheetSize A3 = new SheetSize(297, 420);

  /** Whole and exact: 2 hours and 4 sheets of A5 at rates of 0.03 ml, 40 ml and 15 ml. */
  @Test
  void amountsFollowFromHoursSheetsAndRates() {
    Outing outing = outing(2, 4, SheetSize.A5).withRates(rates(0.03, 40, 15, 3, 50, 0.25, 1.5));
    PackingNeeds needs = needs(outing);
    assertThat(needs.paintMl()).isEqualTo(0.12, within(1e-12)); // 4 · 0.03
    assertThat(needs.waterMl()).isEqualTo(150); // 2 · 40 + 4 · 15 = 140, up to the next 50
    assertThat(needs.dirtyMl()).isEqualTo(200); // 1.1 · 150 = 165
    assertThat(needs.cups()).isEqualTo(3);
    assertThat(needs.cupFillings()).isEqualTo(1, within(1e-12)); // 150 / (3 · 50)
    assertThat(needs.sheets()).isEqualTo(4);
    assertThat(needs.spareSheets()).isEqualTo(1); // 4 · 0.25
    assertThat(needs.wipes()).isEqualTo(6); // 4 · 1.5
  }

  /** A full step is not rounded up to the next: 2.5 · 40 + 0 = 100. */
  @Test
  void aFullStepOfWaterStays() {
    Outing outing = outing(2.5, 0, SheetSize.A5).withRates(rates(0.03, 40, 15, 2, 50, 0.25, 2));
    assertThat(needs(outing).waterMl()).isEqualTo(100);
    assertThat(needs(outing).dirtyMl()).isEqualTo(150); // 110
  }

  /** ISO 216: A3 is 297 × 420 mm, 4.013 times the 148 × 210 mm of A5 (both rounded to mm). */
  @Test
  void aLargerSheetTakesMoreByItsArea() {
    PackingNeeds needs = needs(outing(0, 2, A3));
    double inA5 = 297.0 * 420 / (148 * 210);
    assertThat(needs.paintMl()).isEqualTo(2 * inA5 * 0.035, within(1e-12));
    assertThat(needs.waterMl()).isEqualTo(200); // 2 · 4.013 · 20 = 160.5
  }

  /**
   * Common practice: 100–250 ml of water for half a day (4 h) of small sketches, 500–1000 ml for
   * large sheets, 0.02–0.05 ml of paint for a small sketch.
   */
  @Test
  void theUsualRatesGiveWhatIsCommonPractice() {
    assertThat(needs(outing(4, 4, SheetSize.A5)).waterMl()).isBetween(100.0, 250.0);
    assertThat(needs(outing(4, 3, new SheetSize(380, 560))).waterMl()).isBetween(500.0, 1000.0);
    assertThat(needs(outing(4, 1, SheetSize.A5)).paintMl()).isBetween(0.02, 0.05);
  }

  @ParameterizedTest(name = "{0} × {1} mm: {2} mm")
  @CsvSource({"148, 210, 15", "297, 420, 30", "560, 380, 40", "20, 20, 5", "900, 1200, 50"})
  void theLargestBrushIsATenthOfTheShorterSide(double width, double height, double brush) {
    assertThat(needs(outing(1, 1, new SheetSize(width, height))).washBrushMm()).isEqualTo(brush);
  }

  @Test
  void anOutingWithoutAnythingNeedsNothing() {
    PackingNeeds needs = needs(outing(0, 0, SheetSize.A5));
    assertThat(needs.paintMl()).isZero();
    assertThat(needs.waterMl()).isZero();
    assertThat(needs.dirtyMl()).isZero();
    assertThat(needs.spareSheets()).isZero();
    assertThat(needs.wipes()).isZero();
    assertThat(needs.runningOut()).isEmpty();
  }

  @Test
  void withoutCupsNothingIsPoured() {
    Outing outing = outing(3, 3, SheetSize.A5).withRates(rates(0.03, 40, 15, 0, 50, 0.25, 2));
    assertThat(needs(outing).cupFillings()).isZero();
  }

  /**
   * Where S = 0 only K times load counts, so of a paint with four times the K a quarter gives the
   * same tint: of 1 ml the weak one takes 0.8, the strong one 0.2.
   */
  @Test
  void aStrongPaintGoesSlowerInProportion() {
    PackingNeeds needs = needs(takingOneMl(outing(1, 10, SheetSize.A5)));
    assertThat(needs.paints()).extracting(PaintUse::paintId).containsExactly("PB29", "PY154");
    assertThat(needs.paints().get(0).useMl()).isEqualTo(0.8, offset(1e-6));
    assertThat(needs.paints().get(1).useMl()).isEqualTo(0.2, offset(1e-6));
  }

  /**
   * Half goes evenly (0.8 and 0.2 of it), half into the one colour, which the yellow alone makes.
   */
  @Test
  void halfOfThePaintGoesIntoTheSubjectColours() {
    Lab yellow =
        new Mixer(OpticsTable.of(List.of("y"), List.of(optics(4, 380, 490)), PAPER))
            .lab(Recipe.of("y"), 0.25);
    Outing outing =
        takingOneMl(outing(1, 10, SheetSize.A5))
            .withSubjects(List.of(new SubjectColour("gorse", yellow)));
    PackingNeeds needs = needs(outing);
    assertThat(needs.paints().get(0).useMl()).isEqualTo(0.4, offset(1e-6));
    assertThat(needs.paints().get(1).useMl()).isEqualTo(0.6, offset(1e-6));
  }

  /** A half pan of 2 ml, half filled, and a dab of 0.2 ml (common practice). */
  @Test
  void whatIsAboardIsTheSumOverThePaintsWells() {
    PackingNeeds needs = needs(takingOneMl(outing(1, 10, SheetSize.A5)));
    assertThat(needs.paints().get(0).aboardMl()).isEqualTo(1.2, within(1e-12));
    assertThat(needs.paints().get(1).aboardMl()).isEqualTo(4, within(1e-12));
    assertThat(needs.paints().get(0).outings()).isEqualTo(1.5, offset(1e-5)); // 1.2 / 0.8
    assertThat(needs.paints().get(1).outings()).isEqualTo(20, offset(1e-4)); // 4 / 0.2
    assertThat(needs.runningOut()).isEmpty();
  }

  @Test
  void aPaintThatGivesOutIsNamed() {
    Outing outing = takingOneMl(outing(1, 20, SheetSize.A5)); // 2 ml in all, 1.6 of the blue
    assertThat(needs(outing).runningOut()).extracting(PaintUse::paintId).containsExactly("PB29");
  }

  @Test
  void metalsAndFadingPaintsAboardAreNamed() {
    Kit kit = Lineups.kit(Lineups.paints("PY35", "PR83", "PB29"), 3, "PY35", "PR83", "PB29");
    Outing outing = outing(1, 1, SheetSize.A5).withLineup(Optional.of(Lineups.ID));
    PackingNeeds needs = PackingNeeds.of(kit, outing, Lineups.LIBRARY, () -> false);
    assertThat(needs.metals()).containsKey("Cd");
    assertThat(needs.metals().get("Cd")).containsExactly("PY35");
    assertThat(needs.fading()).containsExactly("PR83");
  }

  @ParameterizedTest(name = "{0} seen from {1}: {2}")
  @CsvSource({
    "2027-05-14, 2027-05-15, PAST",
    "2027-05-15, 2027-05-15, TODAY",
    "2027-05-16, 2027-05-15, AHEAD",
    "2037-05-14, 2027-05-15, AHEAD",
    "2037-05-15, 2027-05-15, FAR_AHEAD",
    "9999-12-31, 2027-05-15, FAR_AHEAD",
    ", 2027-05-15, OPEN"
  })
  void aDateIsPastTodayAheadOrTooFarToBeMeant(LocalDate date, LocalDate today, OutingDay day) {
    assertThat(OutingDay.of(Optional.ofNullable(date), today)).isEqualTo(day);
  }

  private static PackingNeeds needs(Outing outing) {
    return PackingNeeds.of(kit(), outing, Lineups.LIBRARY, () -> false);
  }

  private static Outing outing(double hours, int sheets, SheetSize size) {
    return new Outing("o", "day", Optional.empty(), "", Optional.empty(), hours, sheets, List.of())
        .withSheetSize(size);
  }

  private static Outing takingOneMl(Outing outing) {
    return outing
        .withLineup(Optional.of("l"))
        .withRates(rates(0.1, 0, 0, 2, 80, 0, 0)); // 0.1 ml for each of 10 sheets
  }

  private static PackingRates rates(
      double paint, double hour, double a5, int cups, double cup, double spare, double wipes) {
    return new PackingRates(paint, hour, a5, cups, cup, spare, wipes);
  }

  /** A weak blue in half a half pan and in a dab, a yellow four times as strong in a full pan. */
  private static Kit kit() {
    Box box =
        new Box(
            "b",
            "box",
            100,
            40,
            100,
            40,
            List.of(
                new Well("1", "1", WellKind.HALF_PAN, 0, 0, 19, 16),
                new Well("2", "2", WellKind.PAN, 20, 0, 19, 30),
                new Well("3", "3", WellKind.DAB, 40, 0, 10, 10)));
    Map<String, Filling> fillings = new LinkedHashMap<>();
    fillings.put("1", new Filling("PB29", Fill.HALF));
    fillings.put("2", new Filling("PY154", Fill.FULL));
    fillings.put("3", new Filling("PB29", Fill.DAB));
    return new Kit(
        "kit",
        new Shelf(
            List.of(measured("PB29", optics(1, 590, 730)), measured("PY154", optics(4, 380, 490)))),
        List.of(box),
        List.of(new Lineup("l", "lineup", "b", fillings)),
        List.of(),
        PAPER,
        WashStrengths.USUAL,
        "");
  }

  private static Paint measured(String pigment, Optics optics) {
    Paint usual = Lineups.paint(pigment);
    return new Paint(
        usual.id(),
        usual.name(),
        "",
        usual.pigments(),
        usual.handling(),
        usual.ownership(),
        Optional.of(optics),
        "");
  }

  /** Takes away one part of the spectrum and scatters nothing. */
  private static Optics optics(double absorption, double fromNm, double toNm) {
    return new Optics(
        Spectrum.ofWavelengths(nm -> nm >= fromNm && nm <= toNm ? absorption : 0),
        Spectrum.flat(0),
        OpticsSource.SPECTRA,
        1);
  }
}
