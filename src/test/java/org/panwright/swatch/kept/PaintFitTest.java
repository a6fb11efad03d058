package org.panwright.swatch.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Film;
import org.panwright.mixing.Surface;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PaintedCoat.Strength;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.Staining;
import org.panwright.paint.Swatchbook;
import org.panwright.paint.Transparency;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.fit.FitRefusal;
import org.panwright.swatch.fit.FitRefusedException;

/** Coats painted from made-up optics must give those optics' colours back. */
class PaintFitTest {
  private static final Strength FULL = Strength.FULL;
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final Optics BLUE = optics(nm -> 0.05 + 4 * bell(nm, 600, 70), 0.15);
  private static final Optics YELLOW =
      optics(nm -> 0.03 + 5 / (1 + Math.exp((nm - 500) / 12)), 0.4);

  @Test
  void aPaintsOwnCoatsReplaceTheEstimate() throws Exception {
    Paint blue = paint("blue", "PB29", coat("full", BLUE, 1), coat("wash", BLUE, 0.25));
    PaintFitReport report = fit(Set.of("blue"), blue);
    assertThat(report.optics()).containsOnlyKeys("blue");
    assertThat(report.optics().get("blue").source()).isEqualTo(OpticsSource.SWATCHES);
    for (double load : new double[] {1, 0.5, 0.1}) {
      assertThat(difference(report.optics().get("blue"), BLUE, load)).isLessThan(2.5);
    }
    assertThat(report.coats()).hasSize(2);
    assertThat(report.unused()).isEmpty();
  }

  @Test
  void aCoatOfTwoPaintsTellsOfBoth() throws Exception {
    Film green = Film.of(BLUE, 0.5).plus(YELLOW, 0.5);
    PaintedCoat mixed =
        PaintedCoat.of("mix", colour(green), Strength.FULL)
            .withLoad(1)
            .withMixedWith(Admixture.of("yellow", 0.5));
    Paint blue = paint("blue", "PB29", coat("full", BLUE, 1), coat("wash", BLUE, 0.25), mixed);
    Paint yellow = paint("yellow", "PY65", coat("full", YELLOW, 1), coat("wash", YELLOW, 0.25));
    PaintFitReport report = fit(Set.of("blue", "yellow"), blue, yellow);
    assertThat(report.optics()).containsOnlyKeys("blue", "yellow");
    Film predicted =
        Film.of(report.optics().get("blue"), 0.5).plus(report.optics().get("yellow"), 0.5);
    assertThat(Difference.ciede2000(colour(predicted).lab(), colour(green).lab())).isLessThan(1.5);
  }

  @Test
  void aCoatMixedWithAPaintThatIsGoneIsLeftOutAndSaid() throws Exception {
    PaintedCoat mixed = coat("mix", BLUE, 1).withMixedWith(Admixture.of("gone", 0.5));
    Paint blue = paint("blue", "PB29", coat("full", BLUE, 1), mixed);
    assertThat(fit(Set.of("blue"), blue).unused())
        .containsExactly(new PaintFitReport.Unused("blue", mixed));
  }

  @Test
  void oneSwatchAloneBendsTheKnownPigmentToIt() throws Exception {
    Optics own = make("PB29");
    Paint blue = paint("blue", "PB29", PaintedCoat.of("full", colour(Film.of(own, 1)), FULL));
    Optics found = fit(Set.of("blue"), blue).optics().get("blue");
    assertThat(difference(found, own, 1)).isLessThan(2);
    assertThat(difference(found, own, 0.25))
        .isLessThan(difference(blue.optics(LIBRARY), own, 0.25))
        .isLessThan(2 * found.expectedError());
    assertThat(found.expectedError()).isGreaterThan(2);
  }

  @Test
  void aWashOfUnknownStrengthIsNotTakenAtItsWord() throws Exception {
    Optics own = make("PB29");
    PaintedCoat full = PaintedCoat.of("full", colour(Film.of(own, 1)), FULL);
    PaintedCoat thin = PaintedCoat.of("thin", colour(Film.of(own, 0.12)), Strength.WASH);
    PaintFitReport free = fit(Set.of("blue"), paint("blue", "PB29", full, thin));
    PaintFitReport held = fit(Set.of("blue"), paint("blue", "PB29", full, thin.withLoad(0.25)));
    double freed = difference(free.optics().get("blue"), own, 0.5);
    assertThat(freed).isLessThan(3);
    assertThat(freed).isLessThan(difference(held.optics().get("blue"), own, 0.5));
    assertThat(free.coats().get(1).load()).isBetween(0.06, 0.2);
  }

  /** Everything laid four times as heavily as the library's coats, and no load noted. */
  @Test
  void aHeavyHandIsToldFromStrongPaints() throws Exception {
    Optics blue = times(4, make("PB29"));
    Optics yellow = times(4, make("PY3"));
    Optics white = times(4, estimate("PW6"));
    PaintFitReport report =
        fit(
            Set.of("blue", "yellow"),
            paint("blue", "PB29", unnoted(blue, white)),
            paint("yellow", "PY3", unnoted(yellow, white)));
    Optics blueFound = report.optics().get("blue");
    Optics yellowFound = report.optics().get("yellow");
    for (double load : new double[] {1, 0.4, 0.15}) {
      Film painted = Film.of(blue, load / 2).plus(yellow, load / 2);
      Film predicted = Film.of(blueFound, load / 2).plus(yellowFound, load / 2);
      assertThat(Difference.ciede2000(colour(predicted).lab(), colour(painted).lab()))
          .isLessThan(3);
    }
    assertThat(report.coats())
        .filteredOn(coat -> coat.coat().strength() == Strength.WASH)
        .allSatisfy(coat -> assertThat(coat.load()).isBetween(0.15, 0.4));
  }

  private static PaintedCoat[] unnoted(Optics optics, Optics white) {
    return new PaintedCoat[] {
      PaintedCoat.of("full", colour(Film.of(optics, 1)), FULL),
      PaintedCoat.of("wash", colour(Film.of(optics, 0.25)), Strength.WASH),
      PaintedCoat.of("tint", colour(Film.of(optics, 0.5).plus(white, 0.5)), FULL)
          .withMixedWith(new Admixture(Admixture.Kind.WHITE, "", 0.5))
    };
  }

  private static Optics times(double factor, Optics optics) {
    return new Optics(
        optics.absorption().map(k -> factor * k),
        optics.scattering().map(s -> factor * s),
        OpticsSource.SPECTRA,
        1);
  }

  private static Optics estimate(String code) {
    return LIBRARY.estimate(List.of(new PigmentShare(PigmentName.of(code), 1)));
  }

  @Test
  void noFaceThrowsBackMoreThanTheDarkestReading() throws Exception {
    // L* 16 is R = (32/116)³ = 0.020993 (CIE 015), so the face, 0.03 on paper, is to fall to 0.95
    // of it by the full-strength coat: ln(0.03 / (0.95 · 0.020993)) = 0.4083. L* 20.7 is 0.031635
    // and asks for nothing.
    PaintedCoat wash = grey("wash", 48, Strength.WASH);
    PaintFitReport report =
        fit(Set.of("black"), paint("black", "PBk7", grey("full", 16, FULL), wash));
    PaintFitReport matt =
        fit(Set.of("black"), paint("black", "PBk7", grey("full", 20.7, FULL), wash));

    assertThat(report.optics().get("black").gloss()).isCloseTo(0.4083, within(0.0001));
    assertThat(report.tooDark()).isEmpty();
    assertThat(report.coats().get(0).ciede2000()).isLessThan(1);
    assertThat(matt.optics().get("black").gloss()).isZero();
  }

  @Test
  void aLoadFoundToBeLowerAsksForMoreGloss() throws Exception {
    // Both coats are equally dark, so the wash nobody noted is found to be heavier than usual; the
    // full-strength coat decides. The other way round a thin dark coat decides.
    PaintedCoat dark = grey("some", 14, Strength.UNKNOWN);
    PaintFitReport report =
        fit(Set.of("black"), paint("black", "PBk7", dark, grey("full", 22, FULL)));

    Optics black = report.optics().get("black");
    for (PaintFitReport.CoatFit coat : report.coats()) {
      double face = Surface.DRY.seen() * Math.exp(-black.gloss() * coat.load());
      assertThat(face).isLessThanOrEqualTo(Math.pow((coat.coat().dry().lab().l() + 16) / 116, 3));
    }
  }

  @Test
  void aCoatDarkerThanAnyFaceIsLeftOutAndTold() throws Exception {
    // L* 0.3 is R = 0.3 · 27/24389 = 0.000332 (CIE 015), less than a thousandth of white.
    PaintedCoat cutOff = grey("line", 0.3, FULL);

    PaintFitReport report =
        fit(
            Set.of("black"),
            paint(
                "black", "PBk7", cutOff, grey("full", 26, FULL), grey("wash", 48, Strength.WASH)));

    assertThat(report.tooDark()).containsExactly(cutOff);
    assertThat(report.coats()).hasSize(2);
    assertThat(report.gloss()).isZero();
  }

  private static PaintedCoat grey(String id, double lightness, Strength strength) {
    return PaintedCoat.of(id, new CoatReading.OfColour(new Lab(lightness, 0, 0)), strength);
  }

  @Test
  void moreCoatsAreTrustedMore() throws Exception {
    PaintedCoat full = coat("full", BLUE, 1);
    PaintedCoat wash = coat("wash", BLUE, 0.25);
    PaintedCoat line =
        PaintedCoat.of("line", over(BLUE, Spectrum.flat(0.04)), FULL)
            .withGround(PaintedCoat.Ground.BLACK_LINE, Optional.empty());
    double one = error(full);
    double two = error(full, wash);
    double three = error(full, wash, line);
    assertThat(one).isGreaterThan(two);
    assertThat(two).isGreaterThan(three);
  }

  @Test
  void coatsThatCannotBeMeantAreRefusedWithTheReason() {
    CoatReading paper = new CoatReading.OfSpectrum(Paper.WHITE.reflectance());
    assertRefused(new FitRefusal.NoMark("blue"), PaintedCoat.of("a", paper, FULL));
    CoatReading grey = new CoatReading.OfColour(new Lab(40, 3, -30));
    assertRefused(
        new FitRefusal.AllAlike(),
        PaintedCoat.of("a", grey, FULL),
        PaintedCoat.of("b", grey, Strength.WASH));
    PaintedCoat bright =
        PaintedCoat.of("a", new CoatReading.OfColour(new Lab(95, 0, 2)), FULL)
            .withGround(
                PaintedCoat.Ground.PAPER, Optional.of(new CoatReading.OfColour(new Lab(80, 0, 2))));
    assertRefused(new FitRefusal.LighterThanGround("blue/a"), bright);
  }

  private static void assertRefused(FitRefusal reason, PaintedCoat... coats) {
    assertThatThrownBy(() -> fit(Set.of("blue"), paint("blue", "PB29", coats)))
        .isInstanceOfSatisfying(
            FitRefusedException.class, e -> assertThat(e.refusal()).isEqualTo(reason));
  }

  private static double error(PaintedCoat... coats) throws Exception {
    return fit(Set.of("blue"), paint("blue", "PB29", coats)).optics().get("blue").expectedError();
  }

  /** Another make of a pigment: stronger, with a wider band and more body. */
  private static Optics make(String code) {
    Optics usual = estimate(code);
    return new Optics(
        Spectrum.ofBands(i -> 1.5 * Math.pow(usual.absorption().at(i), 0.9)),
        usual.scattering().map(s -> 1.6 * s),
        OpticsSource.SPECTRA,
        1);
  }

  private static CoatReading over(Optics optics, Spectrum ground) {
    Spectrum inside = Film.of(optics, 1).over(ground.map(Surface.DRY::inside));
    return new CoatReading.OfColour(Light.D65.lab(inside.map(Surface.DRY::outside)));
  }

  @Test
  void nothingPaintedIsRefused() {
    assertThatThrownBy(() -> fit(Set.of("blue"), paint("blue", "PB29")))
        .isInstanceOfSatisfying(
            FitRefusedException.class,
            refused -> assertThat(refused.refusal()).isEqualTo(new FitRefusal.NoSwatches()));
  }

  @Test
  void nobodyWaitsForAFitThatIsOutdated() {
    Paint blue = paint("blue", "PB29", coat("full", BLUE, 1));
    assertThatThrownBy(
            () ->
                PaintFit.of(
                    new Shelf(List.of(blue)), Set.of("blue"), LIBRARY, Paper.WHITE, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  private static PaintFitReport fit(Set<String> ids, Paint... paints) throws Exception {
    return PaintFit.of(new Shelf(List.of(paints)), ids, LIBRARY, Paper.WHITE, () -> false);
  }

  private static double difference(Optics one, Optics other, double load) {
    return Difference.ciede2000(
        colour(Film.of(one, load)).lab(), colour(Film.of(other, load)).lab());
  }

  private static PaintedCoat coat(String id, Optics optics, double load) {
    return PaintedCoat.of(id, colour(Film.of(optics, load)), Strength.UNKNOWN).withLoad(load);
  }

  private static CoatReading colour(Film film) {
    return new CoatReading.OfColour(Light.D65.lab(film.dry(Paper.WHITE)));
  }

  private static Optics optics(java.util.function.DoubleUnaryOperator k, double s) {
    return new Optics(Spectrum.ofWavelengths(k), Spectrum.flat(s), OpticsSource.SPECTRA, 1);
  }

  private static double bell(double nm, double at, double width) {
    return Math.exp(-((nm - at) * (nm - at)) / (2 * width * width));
  }

  private static Paint paint(String id, String code, PaintedCoat... coats) {
    return new Paint(
        id,
        id,
        "",
        List.of(new PigmentShare(PigmentName.of(code), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.NONE, Lightfastness.I),
        Ownership.OWNED,
        Optional.empty(),
        "",
        Swatchbook.EMPTY.with(List.of(coats)));
  }
}
