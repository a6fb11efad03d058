package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Kit;
import org.panwright.kit.MutedFinding;
import org.panwright.kit.SubjectColour;

/** Muted findings and subject colours from a photo, in the file. */
class MutesAndSubjectsTest {
  private static final Path FILE = Path.of("sample.kit.json");
  private static final Kit KIT =
      new Edit.SetSubjects(
              "o1",
              List.of(
                  new SubjectColour("wet slate", new Lab(31, -1.5, -6), 0.375, "quay.jpg"),
                  new SubjectColour("rust", new Lab(42, 25, 30))))
          .apply(
              new Edit.MuteFinding("l1", "metals", "known; gloves packed")
                  .apply(new Edit.MuteFinding("l1", "hue-gap:rose", "").apply(SampleKit.KIT)));

  @Test
  void everythingComesBack() throws Exception {
    KitReader.Result result = read(tree(KIT));
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(result.notices()).isEmpty();
    assertThat(result.keepsake().isEmpty()).isTrue();
  }

  @Test
  void nothingMutedLeavesNoTraceInTheFile() {
    assertThat(KitWriter.write(SampleKit.KIT, Keepsake.NOTHING).toString())
        .doesNotContain("muted")
        .doesNotContain("share\":0.0")
        .doesNotContain("photo");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/lineups/0/muted/1", "/outings/0/subjects/0"})
  void unknownFieldsSurvive(String place) throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at(place)).put("x-weather", "fair");
    KitReader.Result result = read(tree);
    assertThat(result.kit()).isEqualTo(KIT);
    assertThat(KitWriter.write(result.kit(), result.keepsake()).at(place + "/x-weather").asText())
        .isEqualTo("fair");
  }

  @Test
  void aMuteWithoutItsFindingIsLeftOutNamedAndKept() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/lineups/0/muted/0")).remove("finding");
    KitReader.Result result = read(tree);
    assertThat(result.kit().lineup("l1").orElseThrow().muted())
        .containsExactly(new MutedFinding("metals", "known; gloves packed"));
    assertThat(result.notices())
        .singleElement()
        .isInstanceOfSatisfying(
            FileProblem.LeftOut.class,
            problem -> assertThat(problem.toString()).contains("lineups[0].muted[0].finding"));
    assertThat(KitWriter.write(result.kit(), result.keepsake()).at("/lineups/0/muted")).hasSize(2);
  }

  @Test
  void theSameFindingMutedTwiceCountsOnce() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/lineups/0/muted/1")).put("finding", "hue-gap:rose");
    KitReader.Result result = read(tree);
    assertThat(result.kit().lineup("l1").orElseThrow().muted()).hasSize(1);
    assertThat(result.notices().toString())
        .contains(new FieldFault.SameIdTwice("hue-gap:rose").toString());
  }

  @Test
  void aShareAboveOneIsNoShare() throws Exception {
    ObjectNode tree = tree(KIT);
    ((ObjectNode) tree.at("/outings/0/subjects/0")).put("share", 37.5);
    KitReader.Result result = read(tree);
    assertThat(result.kit().outing("o1").orElseThrow().subjects().get(0).share()).isZero();
    assertThat(result.notices()).singleElement().isInstanceOf(FileProblem.Replaced.class);
    JsonNode again = KitWriter.write(result.kit(), result.keepsake());
    assertThat(again.at("/outings/0/subjects/0/share").asDouble()).isEqualTo(37.5);
  }

  private static ObjectNode tree(Kit kit) throws Exception {
    String text = JsonLayout.text(KitWriter.write(kit, Keepsake.NOTHING));
    return (ObjectNode) JsonSource.parse(FILE, text.getBytes(StandardCharsets.UTF_8));
  }

  private static KitReader.Result read(JsonNode tree) throws Exception {
    return new KitReader(PigmentLibraryReader.read()).read(FILE, tree.deepCopy());
  }
}
