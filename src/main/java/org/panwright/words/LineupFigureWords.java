package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.mud.PairMud;
import org.panwright.analysis.worth.Earning;
import org.panwright.analysis.worth.SubjectsLost;
import org.panwright.kit.Kit;

/** The figures of a lineup in sentences: what each paint earns, how the lineup is made up. */
public final class LineupFigureWords {
  public static final String PAINTS = "What each paint earns";
  public static final String BALANCE = "How the lineup is made up";
  public static final String GREYS = "Useful greys and darks";

  private static final int GREYS_NAMED = 8;

  private LineupFigureWords() {}

  /** What is lost when a paint alone leaves, and what it does to mixes. */
  public static String earns(Earning earning, Judgement judgement) {
    Double mud = judgement.mud().byPaint().get(earning.paintId());
    return "%s: without it %.1f %% less hue, %.1f %% less reach%s%s."
        .formatted(
            WordParts.name(judgement.kit(), earning.paintId()),
            100 * earning.ringLost(),
            100 * earning.reachLost(),
            missed(earning.subjects()),
            mud == null ? "" : "; its mixes lose %.0f %% of their colour".formatted(100 * mud));
  }

  /** The colour of the place that would be missed most, where it would be seen to be. */
  private static String missed(SubjectsLost lost) {
    return lost.by() < 1
        ? ""
        : ", %s met less well (ΔE00 %.0f farther)".formatted(lost.missed(), lost.by());
  }

  /** The mix of the others that comes nearest to a paint. */
  public static String nearest(StandIn standIn, Kit kit) {
    return "Nearest mix: %s, ΔE00 %.1f thick and %.1f thin."
        .formatted(RecipeWords.recipe(standIn.recipe(), kit), standIn.masstone(), standIn.tint());
  }

  /** How a lineup is made up, a line for each side of it. */
  public static List<String> balance(Balance balance, Kit kit) {
    List<String> lines = new ArrayList<>();
    lines.add(
        WordParts.sentence(
            Lists.and(
                balance.groups().entrySet().stream()
                    .filter(entry -> entry.getValue() > 0)
                    .map(entry -> count(entry.getValue(), LopsidedWords.group(entry.getKey())))
                    .toList())));
    lines.add(
        "Straight from the pan %d light, %d middle, %d dark."
            .formatted(balance.light(), balance.middle(), balance.dark()));
    lines.add(
        "%d transparent, %d opaque; %d strongly staining; %d granulating; %d of several pigments."
            .formatted(
                balance.paints() - balance.opaque(),
                balance.opaque(),
                balance.staining(),
                balance.granulating(),
                balance.severalPigments()));
    for (Map.Entry<String, org.panwright.paint.HueFamily> lean : balance.leanings().entrySet()) {
      lines.add(
          "%s %s."
              .formatted(WordParts.name(kit, lean.getKey()), LopsidedWords.leans(lean.getValue())));
    }
    return lines;
  }

  private static String count(int count, String many) {
    return count + " " + (count == 1 ? many.substring(0, many.length() - 1) : many);
  }

  /** The pairs that neutralise each other, darkest first. */
  public static List<String> greys(List<PairMud> greys, Kit kit) {
    return greys.stream()
        .limit(GREYS_NAMED)
        .map(
            pair ->
                "%s with %s, %d:%d (L* %.0f in a milk wash)."
                    .formatted(
                        WordParts.name(kit, pair.firstPaintId()),
                        WordParts.name(kit, pair.secondPaintId()),
                        pair.greyest().first(),
                        pair.greyest().second(),
                        pair.greyestL()))
        .toList();
  }
}
