package org.panwright.swatch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Difference;
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

/** Coats painted from made-up optics must give those optics' colours back. */
class PaintFitTest {
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
    return new CoatReading.OfColour(Light.D65.lab(film.seen(Paper.WHITE, Surface.DRY)));
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
