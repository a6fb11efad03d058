package org.panwright.words;

import org.panwright.analysis.finding.AlsoSpare;
import org.panwright.analysis.finding.Doubt;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.worth.Earning;
import org.panwright.kit.Kit;

/** Sentences for findings about paints the lineup could spare. */
final class SpareWords {
  private SpareWords() {}

  static String twins(NearTwins twins, Kit kit) {
    return "They look alike thick and thin (ΔE00 %.1f and %.1f).%s %s earns less; its well could hold another colour."
        .formatted(
            twins.masstone(),
            twins.tint(),
            doubt(twins.doubt(), Math.max(twins.masstone(), twins.tint())),
            WordParts.name(kit, twins.sparePaintId()));
  }

  static String standIn(StandIn standIn, Kit kit) {
    return "A mix of %s comes within ΔE00 %.1f of it thick and %.1f thin: hard to tell apart.%s It earns little else%s."
        .formatted(
            RecipeWords.recipe(standIn.recipe(), kit),
            standIn.masstone(),
            standIn.tint(),
            doubt(standIn.doubt(), standIn.worst()),
            standIn.handy()
                ? ", but saves mixing the colour anew for every wash, which may be why it is there"
                : ", unless you keep it for its texture or to save mixing");
  }

  static String passenger(Earning earning) {
    return "Without it the lineup loses %.1f %% of its hue ring and %.1f %% of its reach%s: the others mix nearly all it mixes. It may still earn its well by texture or convenience."
        .formatted(
            100 * earning.ringLost(),
            100 * earning.reachLost(),
            earning.subjects().share() > 0
                ? ", and no colour of the place gets worse by 1 ΔE00"
                : "");
  }

  static String alsoSpare(AlsoSpare also, Kit kit) {
    if (also.paintIds().size() == 1) {
      return "While all the others stay, they mix nearly all it mixes. Once a paint has left, the"
          + " rest is needed more: take one out, then look again.";
    }
    return "Each of %s could go while all the others stay. They lean on one another: once one has left, the rest is needed more. Take one out, then look again."
        .formatted(Lists.and(also.paintIds().stream().map(id -> WordParts.name(kit, id)).toList()));
  }

  /** What is said where the colours are known less well than they differ; else nothing. */
  private static String doubt(Doubt doubt, double difference) {
    if (!doubt.swallows(difference)) {
      return "";
    }
    String known =
        switch (doubt.estimates()) {
          case 0 -> "Both are known";
          case 1 -> "One is an estimate, known";
          default -> "Both are estimates, known";
        };
    return " %s to about ±%.0f only, which is more than that: paint the two side by side to be sure."
        .formatted(known, doubt.error());
  }
}
