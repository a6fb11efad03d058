package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.Comparison;
import org.panwright.analysis.Dark;
import org.panwright.analysis.HueGap;
import org.panwright.analysis.Move;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/** Sentences for two lineups side by side. */
public final class ComparisonWords {
  /** What is said of two lineups whose hues do not differ. */
  public static final String SAME_HUES = "Both reach the same hues about as cleanly.";

  private ComparisonWords() {}

  /** What going from the first to the second loses and wins in hue, one sentence for each arc. */
  public static List<String> hues(Comparison comparison) {
    List<String> sentences = new ArrayList<>();
    for (Comparison.Shift shift : comparison.lost()) {
      sentences.add(
          "Lost: clean %s; %s."
              .formatted(
                  hues(shift), left(shift, "only %.0f %% of it is left", "none of it is left")));
    }
    for (Comparison.Shift shift : comparison.won()) {
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

  /** What to do in the real box, one line for each move; or why there is none. */
  public static List<String> moves(Comparison comparison, Kit kit, Box box) {
    if (!comparison.sameBox()) {
      return List.of("The lineups are for different boxes.");
    }
    if (comparison.moves().isEmpty()) {
      return List.of("Nothing has to be moved.");
    }
    return comparison.moves().stream().map(move -> move(move, kit, box)).toList();
  }

  private static String move(Move move, Kit kit, Box box) {
    String paint =
        kit.shelf()
            .find(move.paintId())
            .map(Paint::name)
            .map(WordParts::shortened)
            .orElse(move.paintId());
    if (move.toWellId().isEmpty()) {
      return "Take %s out of well %s.".formatted(paint, label(move.fromWellId(), box));
    }
    if (move.fromWellId().isEmpty()) {
      return "Put %s into well %s.".formatted(paint, label(move.toWellId(), box));
    }
    return "Move %s from well %s to well %s."
        .formatted(paint, label(move.fromWellId(), box), label(move.toWellId(), box));
  }

  private static String label(Optional<String> wellId, Box box) {
    return wellId.flatMap(box::find).map(Well::label).orElse("?");
  }

  private static String hues(Comparison.Shift shift) {
    return ColourWords.arc(HueGap.hues(shift.fromDeg(), shift.toDeg()));
  }

  private static String left(Comparison.Shift shift, String some, String none) {
    return shift.less() < 0.02 ? none : String.format(some, 100 * shift.less() / shift.more());
  }

  private static String dark(Optional<Dark> dark) {
    return dark.map(d -> "L* %.0f".formatted(d.dryL())).orElse("none");
  }
}
