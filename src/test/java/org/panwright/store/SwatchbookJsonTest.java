package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.SwatchEdit;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PaintedCoat.Ground;
import org.panwright.paint.PaintedCoat.Strength;

/** The coats kept with a paint and the history of its optics come back from a kit's JSON. */
class SwatchbookJsonTest {
  private static final Path FILE = Path.of("sample.kit.json");
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);
  private static final CoatReading BLUE = new CoatReading.OfColour(new Lab(31, 12, -48));
  private static final Kit KIT = kit();

  private static Kit kit() {
    PaintedCoat full =
        PaintedCoat.of("a", BLUE, Strength.FULL)
            .withLoad(1)
            .withOrigin(DAY, "sheet 1.png")
            .withWet(new CoatReading.OfColour(new Lab(28, 13, -50)));
    PaintedCoat tint =
        PaintedCoat.of("b", new CoatReading.OfSpectrum(Spectrum.flat(0.4)), Strength.UNKNOWN)
            .withMixedWith(Admixture.white());
    PaintedCoat mixed =
        PaintedCoat.of("c", BLUE, Strength.WASH)
            .withMixedWith(Admixture.of("p2", 0.25))
            .withGround(Ground.BLACK_LINE, Optional.of(new CoatReading.OfColour(new Lab(9, 0, 0))));
    Optics first = new Optics(Spectrum.flat(2), Spectrum.flat(0.1), OpticsSource.SPECTRA, 2);
    Optics second = new Optics(Spectrum.flat(3), Spectrum.flat(0.2), 0.7, OpticsSource.SWATCHES, 3);
    Kit coats =
        new SwatchEdit.RecordSwatches(Map.of("p1", List.of(full, tint, mixed)))
            .apply(SampleKit.KIT);
    Kit once =
        new SwatchEdit.UseOptics(Map.of("p1", Optional.of(first)), from("blue.txt")).apply(coats);
    return new SwatchEdit.UseOptics(Map.of("p1", Optional.of(second)), from("3 coats")).apply(once);
  }

  private static OpticsOrigin from(String detail) {
    return new OpticsOrigin(Optional.of(DAY), OpticsOrigin.Reason.FITTED, detail);
  }

  @Test
  void everythingKeptWithAPaintComesBack() throws Exception {
    KitReader.Result result = read(tree());
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(result.keepsake().isEmpty()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/swatches/0",
        "/swatches/0/dry",
        "/swatches/0/dry/lab",
        "/swatches/0/wet",
        "/swatches/1/mixedWith",
        "/swatches/2/ground",
        "/opticsFrom",
        "/formerOptics/1",
        "/formerOptics/1/from",
        "/formerOptics/1/optics"
      })
  void unknownFieldsSurvive(String place) throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at("/shelf/paints/0" + place)).put("x-weather", "fair");
    KitReader.Result result = read(tree);
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(KitWriter.write(result.kit(), result.keepsake())).isEqualTo(tree);
  }

  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource({
    "/swatches/0/dry/lab, l, 100, 2",
    "/swatches/0/dry/lab, a, 900, 2",
    "/swatches/2, over, 7, 2",
    "/swatches/1/mixedWith, share, 1, 2",
    "/formerOptics/1/from, reason, 3, 3"
  })
  void aPartThatCannotBeUsedIsLeftOutNamedAndKept(
      String place, String field, double value, int coatsLeft) throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at("/shelf/paints/0" + place)).put(field, value);
    KitReader.Result result = read(tree);
    assertThat(result.kit().shelf().find("p1").orElseThrow().swatchbook().coats())
        .hasSize(coatsLeft);
    assertThat(result.notices())
        .singleElement()
        .isInstanceOfSatisfying(
            FileProblem.LeftOut.class,
            left -> assertThat(left.at()).endsWith(field).startsWith("shelf.paints[0]."));
    assertThat(KitWriter.write(result.kit(), result.keepsake())).isEqualTo(tree);
  }

  @Test
  void aListThatIsNoneIsKeptAsItIs() throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at("/shelf/paints/0")).put("swatches", "none yet");
    KitReader.Result result = read(tree);
    assertThat(result.notices()).hasSize(1);
    assertThat(result.kit().shelf().find("p1").orElseThrow().swatchbook().coats()).isEmpty();
    assertThat(KitWriter.write(result.kit(), result.keepsake())).isEqualTo(tree);
  }

  private static ObjectNode tree() {
    return KitWriter.write(KIT, Keepsake.NOTHING);
  }

  private static KitReader.Result read(ObjectNode tree) throws Exception {
    return new KitReader(PigmentLibraryReader.read()).read(FILE, tree);
  }
}
