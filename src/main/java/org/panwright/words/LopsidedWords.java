package org.panwright.words;

import java.util.Locale;
import java.util.Optional;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.finding.Lopsided;
import org.panwright.kit.Kit;
import org.panwright.paint.HueFamily;

/** Sentences for lineups that lean too far to one side. */
final class LopsidedWords {
  private LopsidedWords() {}

  static String title(Lopsided lopsided) {
    return switch (lopsided.side()) {
      case CROWDED -> share(lopsided, group(lopsided));
      case MISSING -> "No " + group(lopsided).substring(0, group(lopsided).length() - 1);
      case LEANING ->
          "%s %s lean %s"
              .formatted(
                  lopsided.count() == 2 ? "Both" : "All " + lopsided.count(),
                  group(lopsided),
                  family(lopsided.lean().orElseThrow()));
      case LIGHT -> share(lopsided, "light");
      case DARK -> share(lopsided, "dark");
      case OPAQUE -> share(lopsided, "opaque");
      case STAINING -> share(lopsided, "strongly staining");
      case GRANULATING -> share(lopsided, "granulating");
    };
  }

  static String meaning(Lopsided lopsided, Kit kit) {
    return switch (lopsided.side()) {
      case CROWDED ->
          "More than a third of the wells hold one kind of colour." + least(lopsided, kit);
      case MISSING ->
          "Many mixes start from one. The hue gaps say what is missing without it."
              + brings(lopsided, kit);
      case LEANING ->
          "Clean mixes towards the other side start from one that does not." + other(lopsided, kit);
      case LIGHT ->
          "Strong accents and deep shadows have little to start from." + swap(lopsided, kit);
      case DARK ->
          "Few of these are light out of the pan; light clear colours come only from much water."
              + swap(lopsided, kit);
      case OPAQUE ->
          "Mixes of several opaque paints turn chalky, and glazes hide what is below."
              + swap(lopsided, kit);
      case STAINING -> "Little of this can be lifted again: mistakes stay." + swap(lopsided, kit);
      case GRANULATING ->
          "Hardly any even wash is left; flat skies become hard." + swap(lopsided, kit);
    };
  }

  /** The painter's word for where a paint leans: "leans violet". */
  static String leans(HueFamily to) {
    return "leans " + family(to);
  }

  private static String share(Lopsided lopsided, String what) {
    return "%d of %d are %s".formatted(lopsided.count(), lopsided.paints(), what);
  }

  private static String least(Lopsided lopsided, Kit kit) {
    return name(lopsided.change().leavingId(), kit)
        .map(" %s earns least of them."::formatted)
        .orElse("");
  }

  private static String brings(Lopsided lopsided, Kit kit) {
    return name(lopsided.change().arrivingId(), kit)
        .map(" Of those on your shelf %s brings most."::formatted)
        .orElse(" There is none on your shelf.");
  }

  private static String other(Lopsided lopsided, Kit kit) {
    return name(lopsided.change().arrivingId(), kit)
        .map(" On your shelf %s leans elsewhere."::formatted)
        .orElse(" None on your shelf leans elsewhere.");
  }

  private static String swap(Lopsided lopsided, Kit kit) {
    Optional<String> leaving = name(lopsided.change().leavingId(), kit);
    return name(lopsided.change().arrivingId(), kit)
        .map(a -> " %s is near %s in colour and not so.".formatted(a, leaving.orElseThrow()))
        .orElse(" Nothing on your shelf is near one of them in colour and not so.");
  }

  private static Optional<String> name(Optional<String> paintId, Kit kit) {
    return paintId.map(id -> WordParts.name(kit, id));
  }

  private static String group(Lopsided lopsided) {
    return group(lopsided.group().orElseThrow());
  }

  static String group(HueGroup group) {
    return group.name().toLowerCase(Locale.ROOT);
  }

  private static String family(HueFamily family) {
    return family.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
