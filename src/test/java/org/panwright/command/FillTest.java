package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that plan fillings and check whether pans fit. */
class FillTest {
  private final Console console = new Console();

  @Test
  void fillSaysWhatGoesInAndWhatIsToBuy(@TempDir Path folder) throws Exception {
    String kit = Console.demo(folder).toString();

    assertThat(console.run("fill", kit, "--lineup", "Quay in May")).isZero();
    assertThat(console.said())
        .contains("Quay in May, for Tin of twelve", "Out of the tubes", "To buy", "crowns")
        .contains(
            "well 5 Pyrrole red (half pan, full): Perylene maroon in it now, exchange the pan")
        .contains("usual practice; makers differ");
  }

  /** What is used and what is left make what was there; nothing comes from nowhere. */
  @Test
  void theJsonAccountsForEveryMillilitre(@TempDir Path folder) throws Exception {
    String kit = Console.demo(folder).toString();

    assertThat(console.run("fill", kit, "--json")).isZero();
    JsonNode answer = new ObjectMapper().readTree(console.said());
    double used = 0;
    for (JsonNode tube : answer.get("tubes")) {
      used += tube.get("usedMl").asDouble();
      assertThat(tube.get("usedMl").asDouble() + tube.get("afterMl").asDouble())
          .isCloseTo(tube.get("beforeMl").asDouble(), within(0.002));
    }
    double given = 0;
    for (JsonNode well : answer.get("wells")) {
      given += well.get("givenMl").asDouble();
      double layers = 0;
      for (JsonNode pour : well.get("layersMl")) {
        layers += pour.asDouble();
      }
      assertThat(layers).isCloseTo(well.get("givenMl").asDouble(), within(0.01));
    }
    assertThat(used).isCloseTo(given, within(0.02)).isPositive();
    assertThat(answer.get("lineups")).as("one a box").hasSize(2);
    assertThat(answer.get("places").size()).isGreaterThan(10);
    assertThat(answer.get("refills")).isNotEmpty();
  }

  @Test
  void fitSaysWhichPansStandProudAndHowManyGoInARow(@TempDir Path folder) throws Exception {
    String kit = Console.demo(folder).toString();

    assertThat(console.run("fit", kit)).isZero();
    assertThat(console.said())
        .contains("Tin of twelve", "Every pan fits its well.")
        .contains("Well 4: the half pan stands 0.6 mm above the rim, with the magnet of 0.6 mm")
        .contains("half pan: 3 (4 by pressing) in a row");
    assertThat(console.run("fit", kit, "--json")).isZero();
  }

  /** The panel of a pocket box is 60 mm wide: ⌊60 / 15.5⌋ = 3, ⌊60 / 15⌋ = 4. */
  @Test
  void theJsonOfFitCountsTheRows(@TempDir Path folder) throws Exception {
    assertThat(console.run("fit", Console.demo(folder).toString(), "--json")).isZero();
    JsonNode pocket = new ObjectMapper().readTree(console.said()).get("boxes").get(1);
    assertThat(pocket.get("wells")).hasSize(6);
    JsonNode half = pocket.get("rows").get(1);
    assertThat(half.get("inRow").asInt()).isEqualTo(3);
    assertThat(half.get("pressed").asInt()).isEqualTo(4);
  }

  @Test
  void aKitMustBeNamed() {
    assertThat(console.run("fill", "--json")).isEqualTo(2);
    assertThat(console.complained()).contains("fill wants one kit").hasLineCount(1);
    assertThat(console.run("fit", "a", "b")).isEqualTo(2);
  }

  @Test
  void anUnknownLineupAndAKitWithoutBoxesAreSaid(@TempDir Path folder) throws Exception {
    assertThat(console.run("fill", Console.demo(folder).toString(), "--lineup", "Sea"))
        .isEqualTo(2);
    Path bare = folder.resolve("bare.kit.json");
    Files.writeString(bare, "{\"schemaVersion\": 1, \"shelf\": {\"paints\": []}}");
    assertThat(console.run("fit", bare.toString())).isEqualTo(2);
    assertThat(console.complained()).contains("has no box");
    assertThat(console.run("fill", bare.toString())).isEqualTo(2);
  }

  @Test
  void aTubeThatHoldsMoreThanItsSizeIsSaidAndTheRestIsPlanned(@TempDir Path folder)
      throws Exception {
    Path kit = Console.demo(folder);
    Files.writeString(kit, Files.readString(kit).replace("\"leftMl\": 3.2,", "\"leftMl\": 32,"));
    String before = Files.readString(kit);
    assertThat(console.run("fill", kit.toString())).isZero();
    assertThat(console.complained()).contains("leaves 32 ml in a tube of 5 ml");
    assertThat(Files.readString(kit)).isEqualTo(before);
  }
}
