package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Fill;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

/** What a kit's JSON gives back: everything, and what the program does not understand besides. */
class KitJsonTest {
  private static final Path FILE = Path.of("sample.kit.json");
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  @Test
  void everythingInAKitComesBack() throws Exception {
    KitReader.Result result = read(tree(SampleKit.KIT));
    assertThat(result.kit()).isEqualTo(SampleKit.KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(result.keepsake().isEmpty()).isTrue();
  }

  @Test
  void anEmptyKitComesBack() throws Exception {
    Kit empty = Kit.empty("nothing yet");
    assertThat(read(tree(empty)).kit()).isEqualTo(empty);
  }

  @Test
  void theOrderOfFillingsComesBack() throws Exception {
    assertThat(read(tree(SampleKit.KIT)).kit().lineup("l1").orElseThrow().fillings().keySet())
        .containsExactly("w2", "w1", "w3");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "/paper",
        "/washes",
        "/shelf",
        "/shelf/paints/1",
        "/shelf/paints/1/pigments/1",
        "/shelf/paints/1/handling",
        "/shelf/paints/2/optics",
        "/boxes/0",
        "/boxes/0/wells/2",
        "/lineups/0",
        "/lineups/0/fillings/0",
        "/outings/0",
        "/outings/0/subjects/1",
        "/outings/0/subjects/1/lab"
      })
  void unknownFieldsSurviveEverywhere(String place) throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at(place)).put("x-weather", "fair").putObject("x-more").put("deep", 1.5);
    KitReader.Result result = read(tree);
    assertThat(result.kit()).isEqualTo(SampleKit.KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void unknownFieldsFollowTheirOwnerThroughEdits() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/1")).put("x-second", true);
    ((ObjectNode) tree.at("/shelf/paints/2")).put("x-third", true);
    KitReader.Result result = read(tree);
    Kit edited =
        new Edit.ChangePaint(result.kit().shelf().paints().get(2).withName("renamed"))
            .apply(new Edit.RemovePaint("p1").apply(result.kit()));
    JsonNode paints = KitWriter.write(edited, result.keepsake()).at("/shelf/paints");
    assertThat(paints).hasSize(2);
    assertThat(paints.at("/0/x-second").asBoolean()).isTrue();
    assertThat(paints.at("/1/name").asText()).isEqualTo("renamed");
    assertThat(paints.at("/1/x-third").asBoolean()).isTrue();
  }

  @Test
  void unknownFieldsGoWithTheirOwner() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/1")).put("x-second", true);
    KitReader.Result result = read(tree);
    Kit edited = new Edit.RemovePaint("p2").apply(result.kit());
    assertThat(text(KitWriter.write(edited, result.keepsake()))).doesNotContain("x-second");
  }

  @Test
  void aPaintWithAnUnknownPigmentIsLeftOutAndKept() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/0/pigments/0")).put("code", "PB298");
    KitReader.Result result = read(tree);
    assertThat(result.kit().shelf().find("p1")).isEmpty();
    assertThat(result.kit().lineup("l1").orElseThrow().fillings()).containsOnlyKeys("w1", "w3");
    assertThat(result.notices())
        .containsExactly(
            new FileProblem.LeftOut(
                FILE,
                "shelf.paints[0]",
                "Ultramarine",
                "shelf.paints[0].pigments[0].code",
                new FileProblem.FieldFault.UnknownPigment("PB298")),
            new FileProblem.LeftOut(
                FILE,
                "lineups[0].fillings[0]",
                "",
                "lineups[0].fillings[0].paint",
                new FileProblem.FieldFault.PointsNowhere("p1")));
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void aLeftOutFillingGivesWayToANewPaintInItsWell() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/0/pigments/0")).put("code", "PB298");
    KitReader.Result result = read(tree);
    Kit edited = new Edit.PlacePaint("l1", "w2", "p2").apply(result.kit());
    JsonNode fillings = KitWriter.write(edited, result.keepsake()).at("/lineups/0/fillings");
    assertThat(fillings).hasSize(3);
    assertThat(fillings.findValuesAsText("well")).containsExactlyInAnyOrder("w1", "w2", "w3");
  }

  @Test
  void aMeasuredPaintMayHaveAnUnknownPigment() throws Exception {
    assertThat(read(tree(SampleKit.KIT)).kit().shelf().find("p3")).isPresent();
  }

  @Test
  void handlingComesFromThePigmentsWhereTheFileHasNone() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/0")).remove("handling");
    KitReader.Result result = read(tree);
    assertThat(result.notices()).isEmpty();
    assertThat(result.kit().shelf().paints().get(0).handling())
        .isEqualTo(
            LIBRARY
                .find(SampleKit.KIT.shelf().paints().get(0).pigments().get(0).pigment())
                .orElseThrow()
                .handling());
  }

  @Test
  void sharesAreBroughtToOneWithANotice() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/1/pigments/0")).put("share", 20);
    ((ObjectNode) tree.at("/shelf/paints/1/pigments/1")).put("share", 60);
    KitReader.Result result = read(tree);
    assertThat(result.kit().shelf().paints().get(1).pigments())
        .extracting(p -> p.share())
        .containsExactly(0.25, 0.75);
    assertThat(result.notices())
        .containsExactly(
            new FileProblem.Replaced(
                FILE, "shelf.paints[1].pigments", new FileProblem.FieldFault.SharesSum(80), ""));
  }

  @Test
  void withoutSharesPigmentsShareEqually() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    tree.at("/shelf/paints/1/pigments").forEach(p -> ((ObjectNode) p).remove("share"));
    KitReader.Result result = read(tree);
    assertThat(result.kit().shelf().paints().get(1).pigments())
        .extracting(p -> p.share())
        .containsExactly(0.5, 0.5);
    assertThat(result.notices()).isEmpty();
  }

  @Test
  void aReplacedValueIsKeptUntilThePainterChangesIt() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/lineups/0/fillings/0")).put("fill", "heaped");
    KitReader.Result result = read(tree);
    assertThat(result.notices())
        .containsExactly(
            new FileProblem.Replaced(
                FILE,
                "lineups[0].fillings[0].fill",
                new FileProblem.FieldFault.UnknownWord("heaped", List.of("full", "half", "dab")),
                "full"));
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
    Kit edited = new Edit.SetFill("l1", "w2", Fill.HALF).apply(result.kit());
    assertThat(KitWriter.write(edited, result.keepsake()).at("/lineups/0/fillings/0/fill").asText())
        .isEqualTo("half");
  }

  @Test
  void aSecondThingWithTheSameIdGetsANewOne() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/shelf/paints/1")).put("id", "p1");
    KitReader.Result result = read(tree);
    assertThat(result.kit().shelf().paints())
        .extracting(p -> p.id())
        .containsExactly("p1", "paint-1", "p3");
    assertThat(result.notices())
        .contains(
            new FileProblem.Replaced(
                FILE,
                "shelf.paints[1].id",
                new FileProblem.FieldFault.SameIdTwice("p1"),
                "paint-1"));
  }

  @Test
  void aBoxWithoutUsableWellsIsLeftOutWithItsLineups() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ArrayNode) tree.at("/boxes/0/wells")).removeAll();
    KitReader.Result result = read(tree);
    assertThat(result.kit().boxes()).isEmpty();
    assertThat(result.kit().lineups()).isEmpty();
    assertThat(result.kit().outings().get(0).lineupId()).isEmpty();
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  @Test
  void aBadWellIsLeftOutAlone() throws Exception {
    ObjectNode tree = tree(SampleKit.KIT);
    ((ObjectNode) tree.at("/boxes/0/wells/1")).put("widthMm", -3);
    KitReader.Result result = read(tree);
    assertThat(result.kit().boxes().get(0).wells()).hasSize(2);
    assertThat(rewritten(result)).isEqualTo(parsed(tree));
  }

  private static ObjectNode tree(Kit kit) throws Exception {
    byte[] bytes = text(KitWriter.write(kit, Keepsake.NOTHING)).getBytes(StandardCharsets.UTF_8);
    return (ObjectNode) JsonSource.parse(FILE, bytes);
  }

  private static KitReader.Result read(JsonNode tree) throws Exception {
    return new KitReader(LIBRARY).read(FILE, tree.deepCopy());
  }

  private static JsonNode rewritten(KitReader.Result result) throws Exception {
    return parsed(KitWriter.write(result.kit(), result.keepsake()));
  }

  private static JsonNode parsed(JsonNode tree) throws Exception {
    return JsonSource.parse(FILE, text(tree).getBytes(StandardCharsets.UTF_8));
  }

  private static String text(JsonNode tree) {
    return JsonLayout.text(tree);
  }
}
