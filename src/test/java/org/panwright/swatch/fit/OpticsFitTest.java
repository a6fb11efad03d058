package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Bands;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Surface;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;

/** Coats are painted by the printed hyperbolic equations, not by the engine; see HyperbolicCoat. */
class OpticsFitTest {
  private static final SwatchSet SET = new SwatchSet(InventedPaints.fourEach(Surface.DRY));
  private static final SwatchSet WITH_BLACK =
      new SwatchSet(InventedPaints.fourAndOneOnBlack(Surface.DRY));
  private static final List<PaintLoad> GREEN =
      List.of(new PaintLoad("yellow", 0.6), new PaintLoad("blue", 0.2));

  @Test
  void explainsCoatsThatFollowTheLaw() throws FitRefusedException {
    FitReport report = OpticsFit.of(SET, FitSettings.FOR_ENGINE);

    assertThat(report.residuals()).hasSize(SET.swatches().size());
    assertThat(report.residuals())
        .extracting(SwatchResidual::ciede2000)
        .allSatisfy(error -> assertThat(error).isLessThan(0.7));
  }

  @Test
  void findsBackKandSWhereTheySteerTheCoat() throws FitRefusedException {
    Optics yellow = OpticsFit.of(WITH_BLACK, FitSettings.FOR_ENGINE).optics().get("yellow");
    Spectrum[] known = InventedPaints.PAINTS.get("yellow");

    for (int band = 10; band < 33; band++) {
      assertThat(yellow.absorption().at(band) / known[0].at(band)).isCloseTo(1, within(0.1));
      assertThat(yellow.scattering().at(band) / known[1].at(band)).isCloseTo(1, within(0.1));
    }
  }

  @ParameterizedTest(name = "{0} yellow to {1} blue")
  @CsvSource({"0.6, 0.2", "0.25, 0.25", "0.2, 0.8", "0.05, 0.05"})
  void predictsMixesThatWereNeverPainted(double yellow, double blue) throws FitRefusedException {
    List<PaintLoad> mix = List.of(new PaintLoad("yellow", yellow), new PaintLoad("blue", blue));

    FitReport report = OpticsFit.of(SET, FitSettings.FOR_ENGINE);

    assertThat(error(report, mix, Surface.DRY)).isLessThan(2.0);
    assertThat(error(OpticsFit.of(WITH_BLACK, FitSettings.FOR_ENGINE), mix, Surface.DRY))
        .isLessThan(0.8);
  }

  @Test
  void findsTheFaceOfAnInstrumentThatLeavesOutGloss() throws FitRefusedException {
    Surface face = Surface.saunderson(0.01, 0.6);
    SwatchSet set = new SwatchSet(InventedPaints.fourAndOneOnBlack(face));

    FitReport report = OpticsFit.of(set, FitSettings.MEASURED);

    assertThat(report.surface().seen()).isLessThan(darkest(set));
    assertThat(error(report, GREEN, face)).isLessThan(0.8);
  }

  @Test
  void followsCoatsThatDryWithASheen() throws FitRefusedException {
    // The paints of the other tests, each coat's face smoothed by k1 exp(-1.2 load) as it is
    // painted.
    List<Swatch> shiny = new ArrayList<>();
    for (Swatch matt : SET.swatches()) {
      Surface face = Surface.DRY.smoothed(1.2 * matt.totalLoad());
      shiny.add(InventedPaints.coat(face, matt.paints()));
    }
    KnownFace face = KnownFace.of(shiny, Set.copyOf(SET.paints()), Map.of());

    FitReport report = OpticsFit.of(new SwatchSet(shiny), FitSettings.FOR_ENGINE.on(face));

    assertThat(shiny).allMatch(face::allows);
    assertThat(shiny).anyMatch(coat -> !KnownFace.MATT.allows(coat));
    assertThat(error(report, GREEN, Surface.DRY.smoothed(1.2 * load(GREEN)))).isLessThan(2.0);
  }

  private static double load(List<PaintLoad> paints) {
    return paints.stream().mapToDouble(PaintLoad::load).sum();
  }

  @Test
  void predictsFromColoursAlone() throws FitRefusedException {
    FitReport report = OpticsFit.of(SET.byColour(), FitSettings.FOR_ENGINE);

    assertThat(error(report, GREEN, Surface.DRY)).isLessThan(5);
    assertThat(report.optics().get("blue").source()).isEqualTo(OpticsSource.SWATCHES);
  }

  @Test
  void theUnitOfTheLoadsDoesNotMatter() throws FitRefusedException {
    SwatchSet inDrops = new SwatchSet(SET.swatches().stream().map(s -> times(s, 40)).toList());
    FitReport one = OpticsFit.of(SET, FitSettings.FOR_ENGINE);
    FitReport other = OpticsFit.of(inDrops, FitSettings.FOR_ENGINE);

    Spectrum predicted = one.predict(GREEN, InventedPaints.paper());
    Spectrum again =
        other.predict(
            GREEN.stream().map(p -> new PaintLoad(p.paint(), 40 * p.load())).toList(),
            InventedPaints.paper());

    for (int band = 0; band < Bands.COUNT; band++) {
      assertThat(again.at(band)).isCloseTo(predicted.at(band), within(1e-6));
    }
  }

  @Test
  void theOrderOfTheSwatchesDoesNotMatter() throws FitRefusedException {
    List<Swatch> turned = new ArrayList<>(SET.swatches());
    java.util.Collections.reverse(turned);

    Lab one =
        Light.D65.lab(
            OpticsFit.of(SET, FitSettings.FOR_ENGINE).predict(GREEN, InventedPaints.paper()));
    Lab other =
        Light.D65.lab(
            OpticsFit.of(new SwatchSet(turned), FitSettings.FOR_ENGINE)
                .predict(GREEN, InventedPaints.paper()));

    assertThat(Difference.ciede2000(one, other)).isLessThan(0.01);
  }

  @Test
  void coatsOverABlackLineCountWithTheirOwnGround() throws FitRefusedException {
    List<Swatch> swatches = new ArrayList<>(SET.swatches());
    swatches.add(InventedPaints.onBlack(Surface.DRY, "white", 0.3));

    FitReport report = OpticsFit.of(new SwatchSet(swatches), FitSettings.FOR_ENGINE);

    assertThat(report.residuals().get(swatches.size() - 1).ciede2000()).isLessThan(1);
  }

  @Test
  void refusesNoSwatches() {
    assertRefused(new SwatchSet(List.of()), new FitRefusal.NoSwatches());
  }

  @Test
  void refusesCoatsThatAreOnlyPaper() {
    Swatch paper =
        new Swatch(
            "nothing",
            List.of(new PaintLoad("water", 1)),
            InventedPaints.paper(),
            InventedPaints.paper());

    assertRefused(new SwatchSet(List.of(paper)), new FitRefusal.NoMark("water"));
  }

  @Test
  void refusesCoatsThatAreAllAlike() {
    Reading red = new Reading.OfColour(new Lab(40, 50, 30));
    Swatch first = new Swatch("a", List.of(new PaintLoad("red", 1)), red, InventedPaints.paper());
    Swatch second = new Swatch("b", List.of(new PaintLoad("blue", 1)), red, InventedPaints.paper());

    assertRefused(new SwatchSet(List.of(first, second)), new FitRefusal.AllAlike());
  }

  @Test
  void refusesAGroundThatIsNoPaper() {
    Reading dark = new Reading.OfSpectrum(Spectrum.flat(0.1));
    Swatch swatch =
        new Swatch(
            "a",
            List.of(new PaintLoad("white", 1)),
            new Reading.OfSpectrum(Spectrum.flat(0.5)),
            dark);

    assertThatThrownBy(() -> OpticsFit.of(new SwatchSet(List.of(swatch)), FitSettings.FOR_ENGINE))
        .isInstanceOfSatisfying(
            FitRefusedException.class,
            e -> assertThat(e.refusal()).isInstanceOf(FitRefusal.NoPaper.class));
  }

  private static void assertRefused(SwatchSet set, FitRefusal refusal) {
    assertThatThrownBy(() -> OpticsFit.of(set, FitSettings.FOR_ENGINE))
        .isInstanceOfSatisfying(
            FitRefusedException.class, e -> assertThat(e.refusal()).isEqualTo(refusal));
  }

  private static double error(FitReport report, List<PaintLoad> mix, Surface face) {
    return Difference.ciede2000(
        Light.D65.lab(report.predict(mix, InventedPaints.paper())),
        InventedPaints.read(face, mix).lab());
  }

  private static double darkest(SwatchSet set) {
    return set.swatches().stream()
        .mapToDouble(s -> s.reading().reflectance().min())
        .min()
        .orElseThrow();
  }

  private static Swatch times(Swatch swatch, double factor) {
    return new Swatch(
        swatch.name(),
        swatch.paints().stream().map(p -> new PaintLoad(p.paint(), factor * p.load())).toList(),
        swatch.reading(),
        swatch.ground());
  }
}
