package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.WellKind;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

class DemoKitTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final Kit DEMO = DemoKit.read(LIBRARY);

  @Test
  void hasAShelfTwoBoxesLineupsForBothAndAnOuting() {
    assertThat(DEMO.shelf().paints()).hasSizeBetween(18, 24);
    assertThat(DEMO.boxes()).hasSize(2);
    assertThat(DEMO.lineups()).extracting(Lineup::boxId).contains("tin", "pocket");
    assertThat(DEMO.outings())
        .singleElement()
        .satisfies(outing -> assertThat(outing.subjects()).isNotEmpty());
  }

  @Test
  void saysThatItIsInvented() {
    assertThat(DEMO.name()).contains("demo");
    assertThat(DEMO.note()).startsWith("Invented");
  }

  @Test
  void namesNoMakerAndKnowsEveryPigment() {
    assertThat(DEMO.shelf().paints()).extracting(Paint::maker).containsOnly("");
    assertThat(DEMO.shelf().paints())
        .allSatisfy(paint -> assertThat(paint.optics(LIBRARY).absorption().max()).isPositive());
  }

  @Test
  void fillsDabsAsDabsAndNothingElse() {
    for (Lineup lineup : DEMO.lineups()) {
      Box box = DEMO.boxOf(lineup);
      lineup
          .fillings()
          .forEach(
              (well, filling) ->
                  assertThat(filling.fill() == Fill.DAB)
                      .as(lineup.name() + ", " + well)
                      .isEqualTo(box.find(well).orElseThrow().kind() == WellKind.DAB));
    }
  }

  @Test
  void carriesOnlyPaintsThePainterHasOrTried() {
    for (Lineup lineup : DEMO.lineups()) {
      assertThat(lineup.paintIds(DEMO.boxOf(lineup)))
          .allSatisfy(
              id ->
                  assertThat(DEMO.shelf().find(id).orElseThrow().ownership())
                      .isNotEqualTo(Ownership.WISHED));
    }
  }

  @Test
  void hasTubesFilledWellsAndBoxesMeasuredInDepth() {
    assertThat(DEMO.stock().tubes()).hasSizeGreaterThan(12);
    assertThat(DEMO.stock().filled()).extracting(FilledWell::boxId).contains("tin", "pocket");
    assertThat(DEMO.stock().currency()).as("of no country").isEqualTo("crowns");
    assertThat(DEMO.boxes())
        .allSatisfy(box -> assertThat(box.depthMm()).isPresent())
        .allSatisfy(box -> assertThat(box.fixtures()).isNotEmpty());
  }

  /** The file in the project is written as the program writes, so that a save changes no line. */
  @Test
  void isLaidOutAsTheProgramWouldSaveIt() throws Exception {
    assertThat(JsonLayout.text(KitWriter.write(DEMO, Keepsake.NOTHING)))
        .isEqualTo(Files.readString(Path.of("demo-data", "harbour.kit.json")));
  }
}
