package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.kit.FileProblem;
import org.panwright.kit.KeptMix;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Wash;

/** The mixes on a lineup's key card in the file. */
class CardMixesTest {
  private static final Path FILE = Path.of("mixes.kit.json");
  private static final KeptMix SAND =
      new KeptMix(
          List.of(new KeptMix.Part("ochre", 3), new KeptMix.Part("blue", 0.5)),
          Wash.CREAM,
          "wet sand");
  private static final KeptMix GREY =
      new KeptMix(List.of(new KeptMix.Part("blue", 1), new KeptMix.Part("gone", 1)), Wash.MILK, "");
  private static final Kit DEMO = DemoKit.read(PigmentLibraryReader.read());

  @Test
  void mixesComeBackAsTheyWere() throws Exception {
    assertThat(mixes(read(tree(keeping(Optional.of(List.of(SAND, GREY)))))))
        .contains(List.of(SAND, GREY));
    assertThat(mixes(read(tree(keeping(Optional.of(List.of())))))).contains(List.of());
    assertThat(mixes(read(tree(keeping(Optional.empty()))))).isEmpty();
    assertThat(tree(keeping(Optional.empty())).at("/lineups/0/cardMixes").isMissingNode()).isTrue();
  }

  @Test
  void fieldsOfALaterVersionAreKept() throws Exception {
    ObjectNode tree = tree(keeping(Optional.of(List.of(SAND))));
    ((ObjectNode) tree.at("/lineups/0/cardMixes/0")).put("stars", 3);
    ((ObjectNode) tree.at("/lineups/0/cardMixes/0/parts/1")).put("brush", "round");
    KitReader.Result result = read(tree);

    JsonNode again = KitWriter.write(result.kit(), result.keepsake());
    assertThat(again.at("/lineups/0/cardMixes/0/stars").asInt()).isEqualTo(3);
    assertThat(again.at("/lineups/0/cardMixes/0/parts/1/brush").asText()).isEqualTo("round");
  }

  @Test
  void aMixWithPartsOfNothingIsLeftOutNamedAndKept() throws Exception {
    ObjectNode tree = tree(keeping(Optional.of(List.of(SAND, GREY))));
    ((ObjectNode) tree.at("/lineups/0/cardMixes/0/parts/0")).put("parts", 0);
    KitReader.Result result = read(tree);

    assertThat(mixes(result)).contains(List.of(GREY));
    assertThat(result.notices())
        .singleElement()
        .isInstanceOfSatisfying(
            FileProblem.LeftOut.class,
            problem ->
                assertThat(problem.toString()).contains("lineups[0].cardMixes[0].parts[0].parts"));
    assertThat(KitWriter.write(result.kit(), result.keepsake()).at("/lineups/0/cardMixes"))
        .hasSize(2);
  }

  @Test
  void aMixWithoutPartsOrOfAnUnknownWashIsLeftOut() throws Exception {
    ObjectNode tree = tree(keeping(Optional.of(List.of(SAND, GREY))));
    ((ObjectNode) tree.at("/lineups/0/cardMixes/0")).putArray("parts");
    ((ObjectNode) tree.at("/lineups/0/cardMixes/1")).put("wash", "soup");

    KitReader.Result result = read(tree);
    assertThat(mixes(result)).contains(List.of());
    assertThat(result.notices()).hasSize(2);
  }

  private static Kit keeping(Optional<List<KeptMix>> mixes) {
    return DEMO.replacing(DEMO.lineups().get(0).withCardMixes(mixes));
  }

  private static Optional<List<KeptMix>> mixes(KitReader.Result result) {
    Lineup lineup = result.kit().lineups().get(0);
    return lineup.cardMixes();
  }

  private static ObjectNode tree(Kit kit) throws Exception {
    String text = JsonLayout.text(KitWriter.write(kit, Keepsake.NOTHING));
    return (ObjectNode) JsonSource.parse(FILE, text.getBytes(StandardCharsets.UTF_8));
  }

  private static KitReader.Result read(JsonNode tree) throws Exception {
    return new KitReader(PigmentLibraryReader.read()).read(FILE, tree.deepCopy());
  }
}
