package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChooseTest {
  @TempDir Path folder;
  private final Console console = new Console();

  @Test
  void jsonHoldsProposalsWithTheirScoreAndBound() throws Exception {
    JsonNode answer =
        json(
            "--wells",
            "8",
            "--dabs",
            "2",
            "--must",
            "Phthalo blue, green shade,PB29",
            "--never",
            "lemon yellow");
    JsonNode best = answer.get("proposals").get(0);

    assertThat(names(best.get("paints")))
        .hasSize(10)
        .contains("Phthalo blue, green shade", "Ultramarine blue")
        .doesNotContain("Lemon yellow")
        .containsAll(names(best.get("dabs")));
    assertThat(names(best.get("dabs"))).hasSize(2);
    assertThat(best.get("provenBest").asBoolean()).isTrue();
    assertThat(best.get("bound").asDouble()).isEqualTo(best.get("score").asDouble());
    assertThat(best.get("score").asDouble()).isBetween(0.5, 1.0);
    assertThat(best.get("reasons")).hasSize(10);
  }

  @Test
  void theAnswerSaysWhyEachPaintIsIn() throws Exception {
    assertThat(
            console.run(
                "choose",
                Console.demo(folder).toString(),
                "--wells",
                "6",
                "--outing",
                "Morning on the quay"))
        .isZero();
    assertThat(console.said())
        .contains("Chosen from 17 paints", "Proposal 1:", "no lineup under these conditions")
        .contains("without it", "Proposal 2:", "in place of");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "--wells 0                                  | No place is asked for",
        "--wells many                               | a whole number from 0 to 60, not “many”",
        "--wells 61                                 | a whole number from 0 to 60, not “61”",
        "--wells 40 --dabs 40                       | together may be at most 60",
        "--wells 30                                 | 30 paints are asked for and the shelf has 21",
        "--wells 19                                 | only 17 of the 21 on the shelf keep to",
        "--wells 3 --must Ultramarin                | did you mean “Ultramarine blue”?",
        "--wells 3 --must PQ7                       | “PQ7”, which is not on the shelf; write it",
        "--wells 3 --must PB29 --never PB29         | must be in and must never be in",
        "--wells 3 --must Viridian                  | only what you own may be used and it is not"
            + " owned",
        "--wells 1 --must PB29,PY43                 | 2 paints must be in and there is only 1",
        "--wells 12 --most 1                        | at most 1 of a hue group only",
        "--wells 3 --lightfastness IV               | takes I, II or III, not “IV”",
        "--wells 3 --weights 1,2                    | takes five numbers",
        "--wells 3 --weights 1,2,3,4,11             | takes five numbers",
        "--wells 3 --outing Nowhere                 | no outing “Nowhere”; it has “Morning on the"
            + " quay”",
        "--dabs 3                                   | choose needs --wells",
      })
  void whatCannotBeDoneIsSaidInOneLine(String arguments, String says) throws Exception {
    List<String> words = new ArrayList<>(List.of("choose", Console.demo(folder).toString()));
    words.addAll(List.of(arguments.split(" ")));

    assertThat(console.run(words.toArray(String[]::new))).isEqualTo(CommandLine.BAD_USE);
    assertThat(console.complained()).contains(says).hasLineCount(1);
    assertThat(console.said()).isEmpty();
  }

  private JsonNode json(String... arguments) throws Exception {
    List<String> words =
        new ArrayList<>(List.of("choose", Console.demo(folder).toString(), "--json"));
    words.addAll(List.of(arguments));
    assertThat(console.run(words.toArray(String[]::new))).isZero();
    return new ObjectMapper().readTree(console.said());
  }

  private static List<String> names(JsonNode list) {
    List<String> names = new ArrayList<>();
    list.forEach(name -> names.add(name.asText()));
    return names;
  }
}
