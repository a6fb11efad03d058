package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.compare.Move;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.finding.Fading;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.subject.Match;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Well;
import org.panwright.mixing.Mixer;
import org.panwright.paint.Paint;

/** Sentences for two lineups side by side. */
public final class ComparisonWords {
  /** What is said of two lineups whose hues do not differ. */
  public static final String SAME_HUES = "Both reach the same hues about as cleanly.";

  /** What is said where neither lineup calls for care. */
  public static final String NO_CAUTIONS = "Neither holds a paint that fades or calls for care.";

  private ComparisonWords() {}

  /** What is compared with what. */
  public static String heading(String first, String second) {
    return "From %s to %s".formatted(WordParts.quoted(first), WordParts.quoted(second));
  }

  /** What going from the first to the second loses and wins in hue, one sentence for each arc. */
  public static List<String> hues(Comparison comparison) {
    return hues(comparison.lost(), comparison.won());
  }

  /** The same for arcs lost and won. */
  public static List<String> hues(List<Comparison.Shift> lost, List<Comparison.Shift> won) {
    List<String> sentences = new ArrayList<>();
    for (Comparison.Shift shift : lost) {
      sentences.add(
          "Lost: clean %s; %s."
              .formatted(
                  hues(shift), left(shift, "only %.0f %% of it is left", "none of it is left")));
    }
    for (Comparison.Shift shift : won) {
      sentences.add(
          "Won: clean %s; %s."
              .formatted(
                  hues(shift),
                  left(shift, "before it was only %.0f %% of that", "there was none before")));
    }
    return sentences.isEmpty() ? List.of(SAME_HUES) : sentences;
  }

  /** How far each covers what the other mixes. */
  public static String reach(Comparison comparison, String first, String second) {
    return "%s mixes %.0f %% of what %s can; %s mixes %.0f %% of what %s can."
        .formatted(
            second,
            100 * comparison.firstCovered(),
            first,
            first,
            100 * comparison.secondCovered(),
            second);
  }

  /** The darkest mixes beside each other. */
  public static String darks(Comparison comparison, String first, String second) {
    return "Darkest dry mix: %s %s, %s %s."
        .formatted(
            first, dark(comparison.firstDarkest()), second, dark(comparison.secondDarkest()));
  }

  /** What sits in both and what changes, one sentence for each that there is. */
  public static List<String> paints(Comparison comparison, Kit kit, String first, String second) {
    List<String> sentences = new ArrayList<>();
    add(sentences, "In both: %s.", comparison.inCommon(), kit);
    add(sentences, "Only in " + first.replace("%", "%%") + ": %s.", comparison.leaving(), kit);
    add(sentences, "Only in " + second.replace("%", "%%") + ": %s.", comparison.coming(), kit);
    return sentences;
  }

  private static void add(List<String> sentences, String form, List<String> paints, Kit kit) {
    if (!paints.isEmpty()) {
      sentences.add(form.formatted(Lists.and(paints.stream().map(id -> name(id, kit)).toList())));
    }
  }

  /** How near each comes to a colour of a place. */
  public static String subject(SubjectPair pair, String first, String second) {
    return "%s: %s %s, %s %s."
        .formatted(pair.subject().name(), first, away(pair.first()), second, away(pair.second()));
  }

  /**
   * The same of all colours of a place, and how far to trust it where the mixes are known less well
   * than the two differ.
   */
  public static List<String> subjects(
      List<SubjectPair> pairs, Judgement ofFirst, Judgement ofSecond, String first, String second) {
    List<String> sentences = new ArrayList<>();
    double error = 0;
    for (SubjectPair pair : pairs) {
      sentences.add(subject(pair, first, second));
      if (pair.first().isPresent() && pair.second().isPresent()) {
        double apart = pair.first().get().deltaE() - pair.second().get().deltaE();
        double known = Math.max(error(ofFirst, pair.first()), error(ofSecond, pair.second()));
        error = known > Math.abs(apart) ? Math.max(error, known) : error;
      }
    }
    if (error > 0) {
      sentences.add(
          String.format(
              Locale.ROOT,
              "These mixes are known to about ±%.0f (ΔE00): a smaller difference between the two"
                  + " is not sure.",
              error));
    }
    return sentences;
  }

  private static double error(Judgement judgement, Optional<Match> match) {
    Mixer mixer = new Mixer(judgement.table());
    return match.map(found -> mixer.expectedError(found.recipe())).orElse(0.0);
  }

  /** How near one comes, for a table: "ΔE00 2.3", or that there is no paint. */
  public static String away(Optional<Match> match) {
    return match.map(m -> "ΔE00 %.1f".formatted(m.deltaE())).orElse("no paint");
  }

  /** The cautions of a lineup, in a few words each. */
  public static List<String> cautions(Judgement judgement) {
    return judgement.findings().stream()
        .filter(finding -> finding instanceof Fading || finding instanceof Metals)
        .map(finding -> FindingWords.title(finding, judgement.kit()))
        .toList();
  }

  /** The cautions of both, told apart, one sentence each; or that there are none. */
  public static List<String> cautions(
      Judgement first, Judgement second, String firstName, String secondName) {
    List<String> ofFirst = cautions(first);
    List<String> ofSecond = cautions(second);
    List<String> sentences = new ArrayList<>();
    ofFirst.stream()
        .filter(ofSecond::contains)
        .forEach(caution -> sentences.add("Both: " + caution + "."));
    ofFirst.stream()
        .filter(caution -> !ofSecond.contains(caution))
        .forEach(caution -> sentences.add(firstName + ": " + caution + "."));
    ofSecond.stream()
        .filter(caution -> !ofFirst.contains(caution))
        .forEach(caution -> sentences.add(secondName + ": " + caution + "."));
    return sentences.isEmpty() ? List.of(NO_CAUTIONS) : sentences;
  }

  /** What to do in the real box, one line for each move; or why there is none. */
  public static List<String> moves(Comparison comparison, Kit kit, Box box) {
    if (!comparison.sameBox()) {
      return List.of("The lineups are for different boxes, so nothing moves from well to well.");
    }
    if (comparison.moves().isEmpty()) {
      return List.of("Nothing has to be moved.");
    }
    return comparison.moves().stream().map(move -> move(move, kit, box)).toList();
  }

  private static String move(Move move, Kit kit, Box box) {
    String paint = name(move.paintId(), kit);
    if (move.toWellId().isEmpty()) {
      return "Take %s out of well %s.".formatted(paint, label(move.fromWellId(), box));
    }
    if (move.fromWellId().isEmpty()) {
      return "Put %s into well %s.".formatted(paint, label(move.toWellId(), box));
    }
    return "Move %s from well %s to well %s."
        .formatted(paint, label(move.fromWellId(), box), label(move.toWellId(), box));
  }

  private static String name(String paintId, Kit kit) {
    return kit.shelf().find(paintId).map(Paint::name).map(WordParts::shortened).orElse(paintId);
  }

  private static String label(Optional<String> wellId, Box box) {
    return wellId.flatMap(box::find).map(Well::label).orElse("?");
  }

  private static String hues(Comparison.Shift shift) {
    return shift.fromDeg() == shift.toDeg()
        ? "hues all round the circle"
        : ColourWords.arc(HueGap.hues(shift.fromDeg(), shift.toDeg()));
  }

  private static String left(Comparison.Shift shift, String some, String none) {
    return shift.less() < 0.02 ? none : String.format(some, 100 * shift.less() / shift.more());
  }

  private static String dark(Optional<Dark> dark) {
    return dark.map(d -> "L* %.0f".formatted(d.dryL())).orElse("none");
  }
}
