package org.panwright.words;

import java.util.List;
import java.util.stream.Collectors;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.mud.PairMud;
import org.panwright.kit.Kit;

/** Sentences for mixes that lose their colour, and for useful greys. */
final class MudWords {
  private MudWords() {}

  static String paint(MuddyPaint muddy, Kit kit) {
    String loses =
        "Mixed with the others it loses %.0f %% of the colour on average; %.0f %% is usual in this box. Pairs that make a useful grey are not counted."
            .formatted(100 * muddy.loss(), 100 * muddy.typical());
    return loses
        + muddy
            .insteadPaintId()
            .map(
                id ->
                    " %s, of nearly the same hue, would lose %.0f %%."
                        .formatted(WordParts.name(kit, id), 100 * muddy.insteadLoss()))
            .orElse(
                " Nothing of nearly the same hue on your shelf is clearly cleaner here without"
                    + " making something else worse.");
  }

  static String pairs(MuddyPairs pairs, Kit kit) {
    String worst =
        pairs.pairs().stream()
            .map(
                pair ->
                    "%s with %s loses %.0f %% of the colour"
                        .formatted(
                            WordParts.name(kit, pair.firstPaintId()),
                            WordParts.name(kit, pair.secondPaintId()),
                            100 * pair.loss()))
            .collect(Collectors.joining("; "));
    String more =
        pairs.count() > pairs.pairs().size()
            ? " %d pairs in all lose half of it or more.".formatted(pairs.count())
            : "";
    return WordParts.sentence(worst)
        + more
        + RemedyWords.of(pairs, kit)
        + greys(pairs.greys(), kit);
  }

  private static String greys(List<PairMud> greys, Kit kit) {
    return greys.isEmpty()
        ? ""
        : " For greys and darks on purpose take "
            + greys.stream()
                .map(
                    pair ->
                        "%s with %s"
                            .formatted(
                                WordParts.name(kit, pair.firstPaintId()),
                                WordParts.name(kit, pair.secondPaintId())))
                .collect(Collectors.joining(", or "))
            + ".";
  }
}
