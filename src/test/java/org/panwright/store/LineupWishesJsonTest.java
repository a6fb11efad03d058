package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.Aim;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.PaintRules;
import org.panwright.kit.PaintWish;
import org.panwright.kit.Weights;
import org.panwright.paint.Lightfastness;

/** What is asked of lineups to be proposed, in the file. */
class LineupWishesJsonTest {
  private static final Path FILE = Path.of("sample.kit.json");
  private static final LineupWishes WISHES =
      new LineupWishes(
          10,
          3,
          Map.of("p1", PaintWish.KEPT, "p3", PaintWish.NEVER, "gone", PaintWish.MUST),
          new PaintRules(false, true, true, Optional.of(Lightfastness.II)),
          Optional.of(2),
          Weights.USUAL.with(Aim.DARKS, 7),
          Optional.of("o1"));
  private static final Kit KIT = new Edit.SetWishes("l1", WISHES).apply(SampleKit.KIT);

  @Test
  void everythingComesBackPaintsThatAreNotThereAmongIt() throws Exception {
    KitReader.Result result = read(tree());
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(result.keepsake().isEmpty()).isTrue();
  }

  @Test
  void nothingAskedLeavesNoTraceInTheFile() {
    assertThat(KitWriter.write(SampleKit.KIT, Keepsake.NOTHING).toString())
        .doesNotContain("wishes");
  }

  @Test
  void whatIsLeftOutIsAsUsual() throws Exception {
    ObjectNode tree = tree();
    ObjectNode lineup = (ObjectNode) tree.at("/lineups/0");
    lineup.putObject("wishes").put("wells", 12);
    KitReader.Result result = read(tree);
    assertThat(wishes(result)).contains(LineupWishes.of(12, 0));
    assertThat(result.notices()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/lineups/0/wishes",
        "/lineups/0/wishes/weights",
        "/lineups/0/wishes/paints/0",
        "/lineups/0/wishes/paints/2"
      })
  void unknownFieldsSurvive(String place) throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at(place)).put("x-moon", "waxing");
    KitReader.Result result = read(tree);
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(written(result).at(place + "/x-moon").asText()).isEqualTo("waxing");
  }

  @ParameterizedTest
  @CsvSource({
    "/lineups/0/wishes, dabs, 51",
    "/lineups/0/wishes, mostOfAGroup, 0",
    "/lineups/0/wishes, lightfastness, 9",
    "/lineups/0/wishes, outing, 4",
    "/lineups/0/wishes/weights, darks, 11"
  })
  void aValueThatCannotBeIsReplacedNamedAndKept(String group, String field, int value)
      throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at(group)).put(field, value);
    KitReader.Result result = read(tree);
    assertThat(wishes(result)).isPresent();
    assertThat(result.notices())
        .singleElement()
        .isInstanceOfSatisfying(
            FileProblem.Replaced.class,
            problem -> assertThat(problem.toString()).contains("lineups[0].wishes", field));
    assertThat(written(result).at(group + "/" + field).asInt()).isEqualTo(value);
  }

  @Test
  void whatIsSaidOfAPaintInAWordThatIsNoneIsLeftOutAndKept() throws Exception {
    ObjectNode tree = tree();
    ObjectNode entry = (ObjectNode) tree.at("/lineups/0/wishes/paints/0");
    String paint = entry.get("paint").asText();
    entry.put("wish", "perhaps");
    KitReader.Result result = read(tree);
    assertThat(wishes(result).orElseThrow().of(paint)).isEqualTo(PaintWish.FREE);
    assertThat(result.notices()).singleElement().isInstanceOf(FileProblem.LeftOut.class);
    assertThat(written(result).at("/lineups/0/wishes/paints/0/wish").asText()).isEqualTo("perhaps");
  }

  @Test
  void wishesThatMakeNoSenseAreKeptUntilOthersAreMade() throws Exception {
    ObjectNode tree = tree();
    ((ObjectNode) tree.at("/lineups/0/wishes")).put("wells", 61);
    KitReader.Result result = read(tree);
    assertThat(wishes(result)).isEmpty();
    assertThat(result.notices()).singleElement().isInstanceOf(FileProblem.Replaced.class);
    assertThat(written(result).at("/lineups/0/wishes/wells").asInt()).isEqualTo(61);

    Kit asked = new Edit.SetWishes("l1", LineupWishes.of(5, 0)).apply(result.kit());
    JsonNode again = KitWriter.write(asked, result.keepsake());
    assertThat(again.at("/lineups/0/wishes/wells").asInt()).isEqualTo(5);
  }

  private static Optional<LineupWishes> wishes(KitReader.Result result) {
    return result.kit().lineup("l1").flatMap(Lineup::wishes);
  }

  private static JsonNode written(KitReader.Result result) {
    return KitWriter.write(result.kit(), result.keepsake());
  }

  private static ObjectNode tree() throws Exception {
    String text = JsonLayout.text(KitWriter.write(KIT, Keepsake.NOTHING));
    return (ObjectNode) JsonSource.parse(FILE, text.getBytes(StandardCharsets.UTF_8));
  }

  private static KitReader.Result read(JsonNode tree) throws Exception {
    return new KitReader(PigmentLibraryReader.read()).read(FILE, tree.deepCopy());
  }
}
