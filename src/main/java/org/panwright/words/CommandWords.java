package org.panwright.words;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Muted;
import org.panwright.analysis.judge.Judgement;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Lab;
import org.panwright.colour.Oklch;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

/** What the command line says. */
public final class CommandWords {
  /** The light and observer of every figure. */
  public static final String LIGHT = "D65, CIE 1931 2° observer";

  /** The program's name. */
  public static final String PROGRAM = "Panwright";

  /** Said when no command was named. */
  public static final String NO_COMMAND =
      "Name a command: report, mix, mixcheck, compare, choose, fill, fit or pack; --help explains"
          + " them.";

  /** Said when {@code mix} has nothing to mix. */
  public static final String NO_PARTS = "Say what to mix, for example: mix PB29:2 PBr7 --wash milk";

  private static final String REPORT_HELP =
      """
      report KIT [--lineup NAME] [--paper SIZE] --out DIR
          Writes the papers and findings of a lineup (the first one unless named) into a folder: all
          papers as PDF at true size, papers.pdf with all of them in one, findings.txt to read,
          report.json for scripts. SIZE is A3, A4 (if none is named), A5, Letter, Legal or Tabloid.\
      """;

  private static final String MIX_HELP =
      """
      mix PART PART ... [--kit KIT] [--wash WASH] [--wet] [--json]
          Predicts the colour of a mix. A PART is a Colour Index name, or with --kit a paint's name,
          with its strength parts: PB29:2 is two parts of PB29, PB15:3 one part of that pigment,
          PB15:3:2 two parts of it. WASH is butter, cream, milk (if none is named), coffee or tea.
          --kit also brings the kit's paper and wash strengths; --wet shows the coat before it dries.\
      """;

  private static final String MIXCHECK_HELP =
      """
      mixcheck --fit FIT.csv --test TEST.csv [--from spectra|colour] [--json]
          Fits each paint from measured swatches in FIT and compares predictions with the mixes
          measured in TEST.\
      """;

  private static final String COMPARE_HELP =
      """
      compare KIT LINEUP LINEUP [--json]
          Puts two lineups of a kit side by side, named as in the kit: what is won and lost by going
          from the first to the second, and what has to be moved in the real box.\
      """;

  private static final String CHOOSE_HELP =
      """
      choose KIT --wells N [--dabs M] [--must PAINT,...] [--never PAINT,...] [--most K]
             [--single-pigment] [--no-cadmium] [--lightfastness I|II|III] [--any-paint]
             [--outing NAME] [--weights RING,REACH,SUBJECTS,DARKS,TRANSPARENCY] [--json]
          Proposes lineups of N paints in pans and M as dabs from what is owned (--any-paint: from
          the whole shelf). PAINT is a name or a Colour Index code; K limits each hue group.\
      """;

  private static final String PACK_HELP =
      """
      pack KIT --outing NAME [--json]
          Says what an outing takes by usual practice: paint, water, paper, brushes, how long each
          paint in the box lasts, and what is still to pack.\
      """;

  private static final String CODES =
      """
      Ends with 0 when done, 2 after bad use or bad input (with a line that says what), 1 after a
      fault of the program.\
      """;

  private CommandWords() {}

  /** The help on one command, or on all if the word is none. */
  public static String help(String command) {
    return switch (command) {
      case "report" -> REPORT_HELP;
      case "mix" -> MIX_HELP;
      case "mixcheck" -> MIXCHECK_HELP;
      case "compare" -> COMPARE_HELP;
      case "choose" -> CHOOSE_HELP;
      case "pack" -> PACK_HELP;
      case "fill" -> FillCommandWords.FILL_HELP;
      case "fit" -> FillCommandWords.FIT_HELP;
      default ->
          String.join(
              "\n\n",
              "Panwright: plan a watercolour travel box. Without a command it opens its window.",
              REPORT_HELP,
              MIX_HELP,
              MIXCHECK_HELP,
              COMPARE_HELP,
              CHOOSE_HELP,
              PACK_HELP,
              FillCommandWords.FILL_HELP,
              FillCommandWords.FIT_HELP,
              CODES);
    };
  }

  /** The answer to {@code --version}. */
  public static String version(Optional<String> version) {
    return WindowWords.PROGRAM + " " + version.orElse(WindowWords.UNBUILT);
  }

  /** The first word is no command. */
  public static String unknownCommand(String word) {
    return ("There is no command %s; there are report, mix, mixcheck, compare, choose, fill, fit"
            + " and pack (--help explains them).")
        .formatted(quoted(word));
  }

  /** A command has no such option. */
  public static String unknownOption(String command, String word) {
    return "%s knows no option %s; %s --help lists its options."
        .formatted(command, quoted(word), command);
  }

  /** An option came last where its value was to follow. */
  public static String noValue(String command, String option) {
    return "%s: after --%s its value is missing.".formatted(command, option);
  }

  /** An option was given twice. */
  public static String optionTwice(String command, String option) {
    return "%s: --%s may be given only once.".formatted(command, option);
  }

  /** An option that must be there is not. */
  public static String optionMissing(String command, String option) {
    return "%s needs --%s; %s --help shows how.".formatted(command, option, command);
  }

  /** A word that can be no file name on this system. */
  public static String noPath(String word) {
    return "%s cannot be the name of a file here.".formatted(quoted(word));
  }

  /** Said before the report that stands in for the window on a kit. */
  public static String noDisplay(String kit) {
    return "There is no display to open a window on, so here is the report on %s instead."
        .formatted(quoted(kit));
  }

  /** After a fault of the program. */
  public static String fault(String place) {
    return "The program made a mistake and stopped; your files are as they were. Whoever mends it"
        + " will want to know: "
        + place
        + ".";
  }

  /** {@code report} was given no kit, or several. */
  public static String reportWantsOneKit(int given) {
    return given == 0
        ? "report needs the kit file to report on, for example: report my.kit.json --out report"
        : "report takes one kit file, %d were given; put names with spaces into quotes."
            .formatted(given);
  }

  /** The kit has no lineup to report on. */
  public static String noLineup(String kit) {
    return "The kit %s has no lineup to report on; make one in the window first."
        .formatted(quoted(kit));
  }

  /** The kit has no lineup of this name. */
  public static String unknownLineup(String name, List<String> known) {
    return "The kit has no lineup %s; it has %s."
        .formatted(
            quoted(name),
            known.stream().map(CommandWords::quoted).collect(Collectors.joining(", ")));
  }

  /** {@code compare} was not given a kit and two lineups. */
  public static String compareWantsTwo(int given) {
    return "compare needs a kit file and the names of two lineups, %d %s given; put names with spaces into quotes."
        .formatted(given, given == 1 ? "word was" : "words were");
  }

  /** The folder to write into cannot be made. */
  public static String noFolder(Path folder) {
    return "The folder %s cannot be made; choose another one with --out."
        .formatted(quoted(folder.toString()));
  }

  /** A file of another origin stands where the report would write. */
  public static String notOurs(String file, Path folder) {
    return "%s in %s was not written by a report, so it is left alone and nothing was written; move it or choose another folder with --out."
        .formatted(quoted(file), quoted(folder.toString()));
  }

  /** There is no paper of that size. */
  public static String unknownPaper(String name, List<String> known) {
    return "%s is no paper size the program knows; write %s."
        .formatted(quoted(name), Lists.or(known));
  }

  /** One of the papers was not written. */
  public static String notWritten(String file, String why) {
    return file + " is left out. " + why;
  }

  /** The report is written. */
  public static String reportWritten(String lineup, Path folder, List<String> files) {
    return "The report on %s is in %s: %s."
        .formatted(quoted(lineup), quoted(folder.toString()), String.join(", ", files));
  }

  /** A part names no known pigment. */
  public static String unknownPigment(String name) {
    return "%s is no pigment the program knows; write a Colour Index name such as PB29, or name a kit with --kit to mix its paints."
        .formatted(quoted(name));
  }

  /** A part names neither a paint of the kit nor a known pigment. */
  public static String unknownPaint(String name) {
    return "%s is neither a paint of the kit nor a pigment the program knows."
        .formatted(quoted(name));
  }

  /** The parts are no number above 0. */
  public static String badParts(String word, String digits) {
    return "In %s the parts must be a number above 0, not %s."
        .formatted(quoted(word), quoted(digits));
  }

  /** There is no such wash. */
  public static String unknownWash(String word) {
    return "There is no wash %s; there are %s."
        .formatted(
            quoted(word),
            Arrays.stream(Wash.values()).map(PaintWords::label).collect(Collectors.joining(", ")));
  }

  /** Strength parts of one paint, for example "2 parts PB29". */
  public static String parts(double parts, String name) {
    String number =
        parts == Math.rint(parts)
            ? String.format(Locale.ROOT, "%.0f", parts)
            : Double.toString(parts);
    return number + (parts == 1 ? " part " : " parts ") + name;
  }

  /** How full a well is, for example "dab". */
  public static String fill(Fill fill) {
    return fill.name().toLowerCase(Locale.ROOT);
  }

  /** The answer of {@code mix}, five lines. */
  public static String mix(
      List<String> parts,
      List<Double> volumes,
      Wash wash,
      boolean wet,
      Oklch oklch,
      Lab lab,
      GamutFit fit,
      double expectedError) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s, %s wash, %s: %s"
            .formatted(
                String.join(" + ", parts),
                PaintWords.label(wash),
                wet ? "wet" : "dry",
                ColourWords.describe(oklch)));
    if (parts.size() > 1) {
      lines.add(
          "by volume of paint: "
              + volumes.stream()
                  .map(volume -> String.format(Locale.ROOT, "%.0f %%", 100 * volume))
                  .collect(Collectors.joining(" + ")));
    }
    lines.add(
        String.format(
            Locale.ROOT, "CIELAB (D65, 2°)  L* %.1f  a* %.1f  b* %.1f", lab.l(), lab.a(), lab.b()));
    lines.add(
        String.format(
            Locale.ROOT, "OKLCh  L %.3f  C %.3f  h %.0f°", oklch.l(), oklch.c(), oklch.hueDeg()));
    lines.add(
        "screen  "
            + fit.shown().toHex()
            + (fit.exact() ? "" : " (the paint is more vivid than the screen can show)"));
    lines.add("Expect " + PaintWords.error(expectedError) + ".");
    return String.join("\n", lines);
  }

  /** The findings on a lineup as a text to read or print. */
  public static String findings(Judgement judgement) {
    Kit kit = judgement.kit();
    Lineup lineup = kit.lineup(judgement.lineupId()).orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s report on %s, %s in %s"
            .formatted(PROGRAM, kit.name(), lineup.name(), kit.boxOf(lineup).name()));
    lines.add("");
    for (Well well : kit.boxOf(lineup).wells()) {
      lines.add(well(well, lineup.in(well.id()), kit));
    }
    lines.add("");
    if (judgement.findings().isEmpty()) {
      lines.addAll(wrapped(FindingWords.NOTHING_FOUND, ""));
    }
    for (Finding finding : judgement.findings()) {
      lines.add("* " + FindingWords.title(finding, kit));
      lines.addAll(wrapped(FindingWords.meaning(finding, kit), "  "));
      FindingWords.action(finding, kit)
          .ifPresent(cure -> lines.addAll(wrapped(cure + ".", "  > ")));
      lines.add("");
    }
    lines.addAll(muted(judgement, kit));
    lines.addAll(
        wrapped(
            "Colours are predicted for dry coats on the kit's paper in daylight ("
                + LIGHT
                + "). They are estimates: paint the mixes that matter before you rely on them.",
            ""));
    return lines.stream().map(WordParts::onOneLine).collect(Collectors.joining("\n")) + "\n";
  }

  private static List<String> muted(Judgement judgement, Kit kit) {
    List<String> lines = new ArrayList<>();
    if (!judgement.muted().isEmpty()) {
      lines.add(FindingListWords.muted(judgement.muted().size()) + ":");
      for (Muted muted : judgement.muted()) {
        lines.add("- " + FindingWords.title(muted.finding(), kit));
        lines.addAll(wrapped(FindingListWords.reason(muted.reason()), "  "));
      }
      lines.add("");
    }
    return lines;
  }

  private static String well(Well well, Optional<Filling> filling, Kit kit) {
    String content =
        filling
            .flatMap(held -> kit.shelf().find(held.paintId()).map(paint -> content(paint, held)))
            .orElse("empty");
    return "  %-6s %s".formatted(well.label(), content);
  }

  private static String content(Paint paint, Filling held) {
    String fill = held.fill() == Fill.FULL ? "" : ", " + fill(held.fill());
    return paint.name() + " (" + paint.codes() + ")" + fill;
  }

  /**
   * A paragraph in lines of a width that is easy to read, the later ones indented like the first.
   */
  private static List<String> wrapped(String paragraph, String first) {
    int width = 78;
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    String indent = " ".repeat(first.length());
    for (String word : paragraph.split(" ", -1)) {
      boolean startsLine = line.length() == first.length();
      if (!startsLine && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        startsLine = true;
      }
      line.append(startsLine ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static String quoted(String text) {
    String shown = text.length() > 80 ? text.substring(0, 79) + "…" : text;
    return "“" + shown + "”";
  }
}
