package org.panwright.words;

import java.util.stream.Collectors;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.NoDark;
import org.panwright.analysis.mud.Dark;
import org.panwright.kit.Kit;

/** Sentences for a lineup's darks, wet and dry. */
final class DarkWords {
  private DarkWords() {}

  static String noDark(NoDark dark, Kit kit) {
    Dark darkest = dark.darkest();
    String has =
        "The darkest dry mix, %s, stays at L* %.0f; a real dark lies below %.0f."
            .formatted(RecipeWords.recipe(darkest.recipe(), kit), darkest.dryL(), Dark.REAL_BELOW);
    String wet =
        darkest.fadesOnDrying()
            ? " Wet it looks dark enough (L* %.0f), but it dries lighter.".formatted(darkest.wetL())
            : "";
    return has
        + wet
        + dark.suggestPaintId()
            .map(
                id ->
                    " %s would bring L* %.0f%s."
                        .formatted(
                            WordParts.name(kit, id),
                            dark.suggestL(),
                            dark.cure().isPresent() ? "" : ", but the box would be the poorer"))
            .orElse(" No paint of your shelf brings one.");
  }

  static String driesGrey(DriesGrey grey, Kit kit) {
    String deceivers =
        grey.deceivers().stream()
            .map(dark -> deceiver(dark, kit))
            .collect(Collectors.joining("; "));
    String more =
        grey.count() > grey.deceivers().size()
            ? ", and %d more".formatted(grey.count() - grey.deceivers().size())
            : "";
    return "Thick and wet these look black, and dry to a grey: %s%s. A dark that stays is %s (L* %.0f dry).%s"
        .formatted(
            deceivers,
            more,
            RecipeWords.recipe(grey.stays().recipe(), kit),
            grey.stays().dryL(),
            RemedyWords.of(grey, kit));
  }

  private static String deceiver(Dark dark, Kit kit) {
    return "%s (L* %.0f wet, %.0f dry)"
        .formatted(RecipeWords.recipe(dark.recipe(), kit), dark.wetL(), dark.dryL());
  }
}
