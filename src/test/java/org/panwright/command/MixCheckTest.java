package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Coats that scatter nothing, on ideal paper: R = exp(−2 K X), the limit S = 0 of Kubelka and Munk,
 * so that mixes multiply. Written by that formula, not by the engine.
 */
class MixCheckTest {
  private final Console console = new Console();
  @TempDir Path folder;
  private String fit;
  private String test;

  @BeforeEach
  void paint() throws IOException {
    List<String> swatches = new ArrayList<>();
    swatches.add(head());
    swatches.add(row("paper,,,,", 0, 0));
    for (double load : new double[] {0.25, 0.5, 1}) {
      swatches.add(row("y,yellow,%s,,".formatted(load), load, 0));
      swatches.add(row("b,blue,%s,,".formatted(load), 0, load));
    }
    fit = write("fit.csv", swatches);
    test =
        write(
            "test.csv",
            List.of(
                head(),
                row("m,yellow,0.5,blue,0.5", 0.5, 0.5),
                row("n,yellow,0.8,blue,0.2", 0.8, 0.2)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"spectra", "colour"})
  void predictsBetterThanAveragingTheScreensNumbers(String source) throws Exception {
    console.run("mixcheck", "--fit", fit, "--test", test, "--from", source, "--json");
    JsonNode answer = new ObjectMapper().readTree(console.said());

    assertThat(answer.get("n").asInt()).isEqualTo(2);
    assertThat(answer.get("median").asDouble())
        .isBetween(0.0, answer.get("srgbAverage").get("median").asDouble() / 2);
    assertThat(answer.get("max").asDouble()).isGreaterThanOrEqualTo(answer.get("p90").asDouble());
    assertThat(answer.get("shareUnder5").asDouble()).isBetween(0.0, 1.0);
    assertThat(answer.get("srgbAverage").fieldNames())
        .toIterable()
        .containsExactly("n", "median", "p90", "max", "shareUnder5");
  }

  @Test
  void speaksInOneLineForEachWayOfMixing() throws Exception {
    assertThat(console.run("mixcheck", "--fit", fit, "--test", test)).isZero();
    assertThat(console.said().lines().limit(3))
        .satisfiesExactly(
            mixes -> assertThat(mixes).isEqualTo("Mixes predicted: 2"),
            law -> assertThat(law).startsWith("Panwright  "),
            average -> assertThat(average).startsWith("Averaging sRGB  "));
  }

  @Test
  void tellsHowTheCoatsOfEachPaintComeOut() throws Exception {
    console.run("mixcheck", "--fit", fit, "--test", test);
    assertThat(console.said())
        .containsPattern("(?m)^  blue +3 coats, median .* largest .*\\(b.*\\)")
        .containsPattern("(?m)^  yellow +3 coats, median .* largest .*\\(y.*\\)")
        .contains("No coat of " + fit + " disagrees with the rest.")
        .contains("Farthest off in " + test + ": ");

    JsonNode answer = json(fit);
    assertThat(answer.get("odd").isNull()).isTrue();
    assertThat(answer.get("paints").findValuesAsText("paint")).containsExactly("blue", "yellow");
    assertThat(answer.get("paints").findValuesAsText("coats")).containsExactly("3", "3");
    assertThat(answer.get("farthest").get(0).get("ciede2000").asDouble())
        .isEqualTo(answer.get("max").asDouble());
  }

  @Test
  void namesTheCoatThatDisagrees() throws Exception {
    List<String> lines = new ArrayList<>(List.of(head(), row("paper,,,,", 0, 0)));
    for (double load : new double[] {0.25, 0.5, 0.75, 1}) {
      lines.add(row("y%s,yellow,%s,,".formatted(load, load), load, 0));
      boolean soiled = load == 0.5;
      lines.add(row("b%s,blue,%s,,".formatted(load, load), soiled ? 1 : 0, load));
    }
    String odd = write("odd.csv", lines);

    console.run("mixcheck", "--fit", odd, "--test", test);
    assertThat(console.said()).contains("Look at this coat again: b0.5.");
    assertThat(json(odd).get("odd").get("sample").asText()).isEqualTo("b0.5");
    assertThat(json(odd).get("odd").get("foretold").asDouble()).isGreaterThan(8);
  }

  @Test
  void tellsOfCoatsWithoutAmounts() throws Exception {
    String some =
        write(
            "some.csv",
            List.of(
                head(),
                row("paper,,,,", 0, 0),
                row("y,yellow,0.5,,", 0.5, 0),
                row("b,blue,,,", 0, 0.5)));
    String open = write("open.csv", List.of(head(), row("m,yellow,,blue,", 0.5, 0.5)));

    assertThat(console.run("mixcheck", "--fit", some, "--test", open)).isZero();
    assertThat(console.complained())
        .contains(some + ": 1 coat has no amount.")
        .contains(open + ": 1 coat has no amount and is predicted");
  }

  /** Capitals, and blanks around as spreadsheets leave them, make no second paint. */
  @Test
  void spellingsOfOneNameAreOnePaintAndToldOf() throws Exception {
    String capitals =
        write(
            "capitals.csv",
            List.of(
                head(),
                row("m,YELLOW\u00a0,0.5, Blue ,0.5", 0.5, 0.5),
                row("n,yellow,0.8,blue,0.2", 0.8, 0.2)));

    assertThat(console.run("mixcheck", "--fit", fit, "--test", capitals)).isZero();

    assertThat(console.said()).contains("Mixes predicted: 2");
    assertThat(console.complained())
        .contains("“yellow” and “YELLOW” count as one paint, “yellow”.")
        .contains("“blue” and “Blue” count as one paint, “blue”.")
        .doesNotContain("left out");
  }

  private JsonNode json(String fitted) throws Exception {
    Console asked = new Console();
    asked.run("mixcheck", "--fit", fitted, "--test", test, "--json");
    return new ObjectMapper().readTree(asked.said());
  }

  @Test
  void saysWhatIsWrongWithTheArguments() {
    assertSays("mixcheck needs --fit", "--test", test);
    assertSays("mixcheck needs --test", "--fit", fit);
    assertSays("after --fit its value is missing", "--test", test, "--fit");
    assertSays("not “all”", "--fit", fit, "--test", test, "all");
    assertSays(
        "--from is spectra or colour, not “smell”.",
        "--fit",
        fit,
        "--test",
        test,
        "--from",
        "smell");
  }

  @Test
  void saysWhatIsWrongWithTheFiles() throws IOException {
    String missing = folder.resolve("missing.csv").toString();
    assertSays("There is no file " + missing, "--fit", missing, "--test", test);
    assertSays("There is no file " + folder, "--fit", folder.toString(), "--test", test);
    assertSays(test + " has no row of bare paper.", "--fit", test, "--test", test);

    String negative = write("negative.csv", List.of(head(), row("p,,,,", 0, 0), bad()));
    assertSays("line 3, column R380: -0.5 is below 0.", "--fit", negative, "--test", test);

    String stranger = write("stranger.csv", List.of(head(), row("m,rose,0.5,blue,0.5", 0.5, 0.5)));
    assertSays("the coat m holds rose", "--fit", fit, "--test", stranger);

    Path binary = folder.resolve("binary.csv");
    Files.write(binary, new byte[] {(byte) 0xff, (byte) 0xfe, 0, (byte) 0xd8});
    assertSays(
        binary + " is no text. Choose a table saved as text",
        "--fit",
        binary.toString(),
        "--test",
        test);

    String onlyPaper = write("paper.csv", List.of(head(), row("p,,,,", 0, 0)));
    assertSays(onlyPaper + " holds no painted coat", "--fit", fit, "--test", onlyPaper);
  }

  @Test
  void coatsOfStrangePaintsAreLeftOutAndTold() throws IOException {
    String some =
        write(
            "some.csv",
            List.of(
                head(),
                row("m,rose,0.5,blue,0.5", 0.5, 0.5),
                row("n,yellow,0.4,blue,0.4", 0.4, 0.4)));
    assertThat(console.run("mixcheck", "--fit", fit, "--test", some)).isZero();
    assertThat(console.said()).contains("Mixes predicted: 1");
    assertThat(console.complained()).contains("1 coat left out").contains("rose");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "one coat of each   | yellow,1,,; blue,1,,",
        "blue only in a mix | yellow,1,,; yellow,0.3,,; yellow,0.5,blue,0.5; yellow,0.2,blue,0.6",
        "no amounts         | yellow,,,; blue,,,",
      })
  void aThinFileStillPredicts(String what, String coats) throws IOException {
    List<String> lines = new ArrayList<>(List.of(head(), row("p,,,,", 0, 0)));
    for (String coat : coats.split("; ", -1)) {
      List<String> cells = List.of(coat.split(",", -1));
      boolean mixed = !cells.get(2).isEmpty();
      double first = cells.get(1).isEmpty() ? 1 : Double.parseDouble(cells.get(1));
      double second = mixed ? Double.parseDouble(cells.get(3)) : 0;
      boolean yellow = cells.get(0).equals("yellow");
      lines.add(row("c" + lines.size() + "," + coat, yellow ? first : 0, yellow ? second : first));
    }
    String thin = write("thin.csv", lines);
    assertThat(console.run("mixcheck", "--fit", thin, "--test", test, "--json")).isZero();
    assertThat(console.said()).contains("median");
  }

  private void assertSays(String part, String... arguments) {
    List<String> words = new ArrayList<>(List.of(arguments));
    words.add(0, "mixcheck");
    Console asked = new Console();
    assertThat(asked.run(words.toArray(String[]::new))).isEqualTo(CommandLine.BAD_USE);
    assertThat(asked.complained()).contains(part).hasLineCount(1);
    assertThat(asked.said()).isEmpty();
  }

  private String write(String name, List<String> lines) throws IOException {
    return Files.write(folder.resolve(name), lines).toString();
  }

  private static String head() {
    return "sample,paint_a,ml_a,paint_b,ml_b,"
        + IntStream.range(0, 36)
            .mapToObj(i -> "R" + (380 + 10 * i))
            .collect(Collectors.joining(","));
  }

  private static String bad() {
    return "x,blue,1,,"
        + IntStream.range(0, 36).mapToObj(i -> ",-0.5").collect(Collectors.joining());
  }

  private static String row(String start, double yellow, double blue) {
    return start
        + IntStream.range(0, 36)
            .mapToObj(i -> "," + reflectance(380 + 10 * i, yellow, blue))
            .collect(Collectors.joining());
  }

  private static double reflectance(double nm, double yellow, double blue) {
    double u = (nm - 620) / 70;
    double k = yellow * 1.2 / (1 + Math.exp((nm - 490) / 10)) + blue * (0.05 + Math.exp(-u * u));
    return 0.9 * Math.exp(-2 * k);
  }
}
