package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {
  private final Console console = new Console();

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "paint                             | no command “paint”",
        "--json                            | no command “--json”",
        "mix                               | Say what to mix",
        "mix --json                        | Say what to mix",
        "mix PB29 --dry                    | knows no option “--dry”",
        "mix PB29 --json=yes               | knows no option “--json=yes”",
        "mix PB29 --wash                   | after --wash its value is missing",
        "mix PB29 --wash soup              | no wash “soup”; there are butter, cream, milk, coffee,"
            + " tea",
        "mix PB29 --wet --wet              | --wet may be given only once",
        "mix PB29:0                        | “0”",
        "mix PB29:-1                       | “-1”",
        "mix PB29:many                     | “many”",
        "mix PB29:                         | must be a number above 0",
        "mix PQ7                           | “PQ7” is no pigment",
        "mix PB29 --kit gone.kit.json      | no file “gone.kit.json”",
        "report                            | report needs the kit file",
        "report a.kit.json b.kit.json --out x | 2 were given",
        "report a.kit.json                 | report needs --out",
        "report gone.kit.json --out x      | no file “gone.kit.json”",
        "report --out                      | after --out its value is missing",
      })
  void badUseGetsOneClearLineAndCode2(String arguments, String says) {
    assertThat(console.run(arguments.split(" "))).isEqualTo(CommandLine.BAD_USE);
    assertThat(console.complained()).contains(says).hasLineCount(1);
    assertThat(console.said()).isEmpty();
  }

  @Test
  void nothingAskedForIsBadUse() {
    assertThat(console.run()).isEqualTo(2);
    assertThat(console.complained()).contains("Name a command").hasLineCount(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "-h", "mix --help", "report --help", "mixcheck --help"})
  void helpIsAnAnswerNotAComplaint(String arguments) {
    assertThat(console.run(arguments.split(" "))).isZero();
    assertThat(console.complained()).isEmpty();
    assertThat(console.said().lines().mapToInt(String::length).max().orElseThrow())
        .isLessThanOrEqualTo(100);
  }

  @Test
  void versionIsOneLineWithTheName() {
    assertThat(console.run("--version")).isZero();
    assertThat(console.complained()).isEmpty();
    assertThat(console.said()).startsWith("Panwright ").hasLineCount(1);
  }

  @Test
  void generalHelpNamesEveryCommandAndCode() {
    console.run("--help");

    assertThat(console.said()).contains("report KIT", "mix PART", "mixcheck --fit", "Ends with 0");
  }

  @Test
  void faultOfTheProgramIsOneLineWithoutItsStack() {
    Command broken =
        (words, out, err) -> {
          throw new IllegalStateException("inner secret");
        };

    assertThat(CommandLine.guarded(broken, List.of(), console.out, console.err)).isEqualTo(1);
    assertThat(console.complained())
        .hasLineCount(1)
        .contains("The program made a mistake", "CommandLineTest.java:")
        .doesNotContain("Exception", "\tat ");
  }

  @Test
  void withoutDisplayTheDemoKitIsReportedOn(@TempDir Path folder) {
    Path report = folder.resolve("report");
    int code = CommandLine.withoutDisplay(new String[0], report, console.out, console.err);

    assertThat(code).isZero();
    assertThat(console.complained()).contains("no display").hasLineCount(1);
    assertThat(report.resolve("key-card.pdf")).isNotEmptyFile();
    assertThat(report.resolve("report.json")).isNotEmptyFile();
  }

  @Test
  void withoutDisplayTheKitNamedIsReportedOn(@TempDir Path folder) throws Exception {
    Path kit = Console.demo(folder);
    Path report = folder.resolve("report");
    String[] arguments = {kit.toString()};

    assertThat(CommandLine.withoutDisplay(arguments, report, console.out, console.err)).isZero();
    assertThat(console.complained()).contains(kit.toString()).hasLineCount(1);
    assertThat(report.resolve("report.json")).isNotEmptyFile();
  }
}
