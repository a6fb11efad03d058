package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.store.DemoKit;

class CompareTest {
  private final Console console = new Console();

  @Test
  void saysWhatIsWonAndWhatHasToBeMoved(@TempDir Path folder) throws Exception {
    String kit = Console.demo(folder).toString();

    assertThat(console.run("compare", kit, "Winter mud flats", "Quay in May")).isZero();
    assertThat(console.said())
        .contains("From “Winter mud flats” to “Quay in May”")
        .contains("Won: clean", "Take Raw sienna out of well 2.", "Put Lemon yellow into well 1.")
        .contains("new grass: Winter mud flats ΔE00");
  }

  /** Every paint of the second box is either in both or comes; none is lost on the way. */
  @Test
  void jsonAccountsForEveryPaint(@TempDir Path folder) throws Exception {
    Kit kit = DemoKit.read(Console.LIBRARY);
    String file = Console.demo(folder).toString();

    assertThat(console.run("compare", file, "winter mud flats", "Quay in May", "--json")).isZero();
    JsonNode answer = new ObjectMapper().readTree(console.said());
    List<String> second = new ArrayList<>(names(answer.get("inCommon")));
    second.addAll(names(answer.get("coming")));
    assertThat(second)
        .containsExactlyInAnyOrderElementsOf(
            kit.lineups().stream()
                .filter(l -> l.name().equals("Quay in May"))
                .flatMap(l -> l.paintIds(kit.boxOf(l)).stream())
                .map(id -> kit.shelf().find(id).orElseThrow().name())
                .toList());
    assertThat(answer.get("first").get("ring")).hasSize(72);
    assertThat(answer.get("subjects")).hasSize(8);
    assertThat(answer.get("sameBox").asBoolean()).isTrue();
  }

  @Test
  void anUnknownLineupIsAnsweredWithThoseThereAre(@TempDir Path folder) throws Exception {
    String kit = Console.demo(folder).toString();

    assertThat(console.run("compare", kit, "Winter", "Quay in May")).isEqualTo(2);
    assertThat(console.complained())
        .contains("no lineup “Winter”; it has “Winter mud flats”")
        .hasLineCount(1);
  }

  @Test
  void anEmptyLineupHasNothingAndWinsTheWholeCircle(@TempDir Path folder) throws Exception {
    Kit demo = DemoKit.read(Console.LIBRARY);
    Lineup empty = new Lineup("empty", "Nothing yet", demo.boxes().get(0).id(), Map.of());
    String kit = Console.saved(new Edit.AddLineup(empty).apply(demo), folder).toString();

    assertThat(console.run("compare", kit, "nothing yet", "Quay in May")).isZero();
    assertThat(console.said())
        .contains("Won: clean hues all round the circle; there was none before.")
        .contains("Darkest dry mix: Nothing yet none", "Put Lemon yellow into well 1.")
        .contains("new grass: Nothing yet no paint");
  }

  @Test
  void twoLineupsHaveToBeNamed() {
    assertThat(console.run("compare", "kit.json", "one")).isEqualTo(2);
    assertThat(console.complained()).contains("names of two lineups, 2 words were given");
  }

  private static List<String> names(JsonNode list) {
    List<String> names = new ArrayList<>();
    list.forEach(name -> names.add(name.asText()));
    return names;
  }
}
