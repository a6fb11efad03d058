package org.panwright.command;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.store.DemoKit;

class ReportTest {
  private static final Kit KIT = DemoKit.read(Console.LIBRARY);

  @TempDir Path folder;
  private final Console console = new Console();
  private Path file;
  private Path out;

  @BeforeEach
  void save() throws Exception {
    file = Console.demo(folder);
    out = folder.resolve("some/where");
  }

  private JsonNode report(String... more) throws Exception {
    String[] arguments = new String[4 + more.length];
    arguments[0] = "report";
    arguments[1] = file.toString();
    arguments[2] = "--out";
    arguments[3] = out.toString();
    System.arraycopy(more, 0, arguments, 4, more.length);
    assertThat(console.run(arguments)).as(console.complained()).isZero();
    return new ObjectMapper().readTree(Files.readAllBytes(out.resolve("report.json")));
  }

  @Test
  void papersFindingsAndFiguresAreWrittenAndNothingElse() throws Exception {
    report("--lineup", "Quay in May");

    assertThat(out.toFile().list())
        .containsExactlyInAnyOrder(
            "key-card.pdf",
            "mixing-chart.pdf",
            "swatch-ladder.pdf",
            "pan-labels.pdf",
            "fill-plan.pdf",
            "packing-list.pdf",
            "comparison.pdf",
            "swatch-sheet.pdf",
            "papers.pdf",
            "findings.txt",
            "report.json");
    for (String paper : out.toFile().list((in, name) -> name.endsWith(".pdf"))) {
      assertThat(Files.readAllBytes(out.resolve(paper))).startsWith("%PDF-".getBytes(US_ASCII));
    }
    assertThat(console.said()).contains("key-card.pdf");
    assertThat(console.complained()).isEmpty();
  }

  /** Bookmarks: one for each paper that was written by itself. */
  @Test
  void allPapersInOneFileHaveTheirBookmarks() throws Exception {
    report("--lineup", "Quay in May");

    try (PDDocument pdf = Loader.loadPDF(out.resolve("papers.pdf").toFile())) {
      assertThat(pdf.getDocumentCatalog().getDocumentOutline().children()).hasSize(8);
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Papers: Morning on the quay");
    }
  }

  @Test
  void aPaperThatIsLeftOutIsToldWithItsReason() throws Exception {
    report();

    assertThat(out.resolve("packing-list.pdf")).doesNotExist();
    assertThat(console.said())
        .contains("packing-list.pdf is left out. No outing takes this lineup along.");
  }

  @Test
  void anEarlierReportIsReplaced() throws Exception {
    report();
    byte[] first = Files.readAllBytes(out.resolve("papers.pdf"));

    report("--paper", "letter");

    assertThat(Files.readAllBytes(out.resolve("papers.pdf"))).isNotEqualTo(first);
    assertThat(out.toFile().list()).hasSize(10);
  }

  @ParameterizedTest
  @ValueSource(strings = {"key-card.pdf", "papers.pdf", "findings.txt", "report.json"})
  void aFileOfAnotherOriginIsLeftAloneAndNothingIsWritten(String name) throws Exception {
    Files.createDirectories(out);
    Files.writeString(out.resolve(name), "my own notes");

    int exit = console.run("report", file.toString(), "--out", out.toString());

    assertThat(exit).isEqualTo(2);
    assertThat(console.complained()).contains(name, "was not written by a report", "--out");
    assertThat(out.toFile().list()).containsExactly(name);
    assertThat(Files.readString(out.resolve(name))).isEqualTo("my own notes");
  }

  @Test
  void anUnknownPaperIsRefusedWithTheKnownOnes() {
    int exit = console.run("report", file.toString(), "--paper", "quarto", "--out", out.toString());

    assertThat(exit).isEqualTo(2);
    assertThat(console.complained())
        .contains("“quarto” is no paper size", "A3, A4, A5, Letter, Legal or Tabloid");
  }

  /** ISO 216: A5 measures 148 × 210 mm. */
  @Test
  void papersComeInTheSizeAskedFor() throws Exception {
    report("--paper", "A5");

    try (PDDocument pdf = Loader.loadPDF(out.resolve("swatch-ladder.pdf").toFile())) {
      assertThat(pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(148, offset(0.01));
    }
  }

  @Test
  void wellsAreThoseOfTheLineupInTheirOrder() throws Exception {
    JsonNode report = report();
    Lineup first = KIT.lineups().get(0);
    List<Well> wells = KIT.boxOf(first).wells();

    assertThat(report.get("lineup").textValue()).isEqualTo(first.name());
    assertThat(report.get("wells")).hasSize(wells.size());
    for (int i = 0; i < wells.size(); i++) {
      JsonNode well = report.get("wells").get(i);
      assertThat(well.get("position").textValue()).isEqualTo(wells.get(i).label());
      boolean filled = first.in(wells.get(i).id()).isPresent();
      assertThat(well.get("paint").isTextual()).isEqualTo(filled);
      assertThat(well.get("fill").isTextual()).isEqualTo(filled);
      assertThat(well.get("pigments").isEmpty()).isNotEqualTo(filled);
      assertThat(well.get("known").isTextual()).isEqualTo(filled);
      if (filled && well.get("known").textValue().equals("estimate")) {
        // A paint known by its pigment names alone is off by 9 (docs/decisions/0036).
        assertThat(well.get("expectedError").doubleValue()).isEqualTo(9);
      }
    }
  }

  @Test
  void ringsHave72StepsAndTheShelfReachesAsFarAsTheLineup() throws Exception {
    JsonNode report = report();

    assertThat(report.get("ring")).hasSize(72);
    assertThat(report.get("shelfRing")).hasSize(72);
    for (int step = 0; step < 72; step++) {
      assertThat(report.get("shelfRing").get(step).doubleValue())
          .isGreaterThanOrEqualTo(report.get("ring").get(step).doubleValue())
          .isBetween(0.0, 0.5);
    }
  }

  @Test
  void lineupWithoutClearColoursHasGapsThatNameThem() throws Exception {
    JsonNode gaps = report("--lineup", "Winter mud flats").get("gaps");

    assertThat(gaps).isNotEmpty();
    for (JsonNode gap : gaps) {
      assertThat(gap.get("from").doubleValue()).isBetween(0.0, 360.0);
      assertThat(gap.get("to").doubleValue()).isBetween(0.0, 360.0);
      assertThat(gap.get("hues").textValue()).isNotBlank();
      assertThat(gap.get("best").doubleValue()).isLessThan(gap.get("possible").doubleValue());
      assertThat(gap.has("suggest") && gap.has("giveUp")).isTrue();
    }
    assertThat(Files.readString(out.resolve("findings.txt")))
        .contains("Winter mud flats", "No clean " + gaps.get(0).get("hues").textValue());
  }

  @Test
  void findingsSayEverythingOfThemselves() throws Exception {
    JsonNode findings = report().get("findings");
    assertThat(findings.size()).isGreaterThan(3);
    double before = 1;
    for (JsonNode finding : findings) {
      assertThat(finding.get("kind").textValue()).matches("[a-z-]+");
      assertThat(finding.get("title").textValue()).isNotBlank();
      assertThat(finding.get("sentence").textValue()).isNotBlank();
      assertThat(finding.get("paints").isArray()).isTrue();
      assertThat(finding.has("cure")).isTrue();
      assertThat(finding.get("muted").isNull()).isTrue();
      assertThat(finding.get("figures").isObject()).isTrue();
      assertThat(finding.get("severity").doubleValue()).isLessThanOrEqualTo(before);
      before = finding.get("severity").doubleValue();
    }
  }

  @Test
  void mutedFindingsComeLastWithTheirReason() throws Exception {
    String lineup = KIT.lineups().get(0).id();
    Kit muted = new Edit.MuteFinding(lineup, "lopsided:missing-yellows", "sea only").apply(KIT);
    file = Console.saved(muted, Files.createDirectory(folder.resolve("muted")));
    JsonNode findings = report().get("findings");
    JsonNode last = findings.get(findings.size() - 1);
    assertThat(last.get("muted").textValue()).isEqualTo("sea only");
    assertThat(last.get("kind").textValue()).isEqualTo("lopsided");
    assertThat(Files.readString(out.resolve("findings.txt")))
        .contains("1 muted finding:", "- No yellow", "Muted: sea only");
  }

  @Test
  void earningsAreOfEveryPaintOnce() throws Exception {
    Lineup first = KIT.lineups().get(0);
    JsonNode earnings = report().get("earnings");
    assertThat(earnings).hasSize(first.paintIds(KIT.boxOf(first)).size());
    for (JsonNode earning : earnings) {
      assertThat(earning.get("ringLost").doubleValue()).isBetween(0.0, 1.0);
      assertThat(earning.get("standIn").get("masstone").doubleValue()).isNotNegative();
    }
  }

  @Test
  void mixesHoldEveryPairRatioAndWashOnce() throws Exception {
    JsonNode mixes = report().get("mixes");
    Lineup first = KIT.lineups().get(0);
    int paints = first.paintIds(KIT.boxOf(first)).size();

    // Each pair in 7 ratios, each paint alone once, all in 5 washes.
    assertThat(mixes).hasSize((paints * (paints - 1) / 2 * 7 + paints) * 5);
    Set<String> seen = new HashSet<>();
    for (JsonNode mix : mixes) {
      assertThat(mix.get("lab")).hasSize(3);
      assertThat(mix.get("known").textValue()).isIn("measured", "your swatches", "estimate");
      boolean named = mix.get("known").textValue().equals("estimate");
      // A paint known by its pigment names alone is off by 9 (docs/decisions/0036).
      if (named && mix.get("a").equals(mix.get("b"))) {
        assertThat(mix.get("expectedError").doubleValue()).isEqualTo(9);
      }
      assertThat(mix.get("lab").get(0).doubleValue()).isBetween(0.0, 100.0);
      assertThat(
              seen.add(
                  "%s+%s %s:%s %s"
                      .formatted(
                          mix.get("a"),
                          mix.get("b"),
                          mix.get("partA"),
                          mix.get("partB"),
                          mix.get("wash"))))
          .isTrue();
    }
  }

  @Test
  void lineupNamesNeedNotMatchInCapitals() throws Exception {
    assertThat(report("--lineup", "WINTER mud flats").get("lineup").textValue())
        .isEqualTo("Winter mud flats");
  }

  @Test
  void unknownLineupIsAnsweredWithTheKnownOnes() {
    int code =
        console.run("report", file.toString(), "--lineup", "Spring", "--out", out.toString());

    assertThat(code).isEqualTo(2);
    assertThat(console.complained())
        .contains("“Spring”", "“Winter mud flats”", "“Quay in May”")
        .hasLineCount(1);
    assertThat(out).doesNotExist();
  }

  @Test
  void kitWithoutLineupIsToldSo() throws Exception {
    Path bare = Console.saved(Kit.empty("bare"), Files.createDirectory(folder.resolve("b")));

    assertThat(console.run("report", bare.toString(), "--out", out.toString())).isEqualTo(2);
    assertThat(console.complained()).contains("has no lineup").hasLineCount(1);
  }

  @Test
  void emptyLineupIsReportedOnAllTheSame() throws Exception {
    Lineup first = KIT.lineups().get(0);
    Kit emptied = KIT.withOutings(List.of()).withLineups(List.of(first.withFillings(Map.of())));
    file = Console.saved(emptied, Files.createDirectory(folder.resolve("e")));
    JsonNode report = report();

    assertThat(report.get("mixes")).isEmpty();
    assertThat(report.get("ring").get(0).doubleValue()).isZero();
    assertThat(Files.readString(out.resolve("findings.txt"))).contains("empty");
    assertThat(out.toFile().list())
        .containsExactlyInAnyOrder("key-card.pdf", "papers.pdf", "findings.txt", "report.json");
  }

  @Test
  void folderInPlaceOfAFileIsToldSo() throws Exception {
    Files.createDirectories(out.getParent());
    Files.writeString(out, "in the way");

    assertThat(console.run("report", file.toString(), "--out", out.toString())).isEqualTo(2);
    assertThat(console.complained()).contains("cannot be made").hasLineCount(1);
    assertThat(out).hasContent("in the way");
  }

  @Test
  void brokenKitIsToldSoAndLeftAlone() throws Exception {
    String text = Files.readString(file);
    Files.writeString(file, text.substring(0, text.length() / 2));

    assertThat(console.run("report", file.toString(), "--out", out.toString())).isEqualTo(2);
    assertThat(console.complained()).contains("breaks off").hasLineCount(1);
    assertThat(Files.readString(file)).isEqualTo(text.substring(0, text.length() / 2));
  }

  @Test
  void nameWithLineBreakOrTurnedWritingStaysOnItsLine() throws Exception {
    Filling shown = KIT.lineups().get(0).fillings().values().iterator().next();
    String name = KIT.shelf().find(shown.paintId()).orElseThrow().name();
    String text = Files.readString(file);
    Files.writeString(file, text.replace(name, "two\\nlines \\u202eturned"));

    report();

    assertThat(out.resolve("findings.txt")).content().contains(" two lines  turned (");
  }

  @Test
  void reportingTwiceWritesTheSameFigures() throws Exception {
    JsonNode once = report();
    JsonNode again = report();

    assertThat(again).isEqualTo(once);
  }
}
