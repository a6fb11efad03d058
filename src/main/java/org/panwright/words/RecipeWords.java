package org.panwright.words;

import java.util.List;
import java.util.Locale;
import org.panwright.analysis.subject.Match;
import org.panwright.kit.Kit;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.Trust;
import org.panwright.paint.WashStrengths;

/** Recipes as a painter would say them. */
public final class RecipeWords {
  /** From this many times the load of a wash on, or this many times below it, it is said so. */
  private static final double NOTEWORTHY = 1.15;

  /** What is said when there is no paint to mix from. */
  public static final String NO_PAINT = "There is no paint to mix from yet.";

  private RecipeWords() {}

  /** A recipe in strength parts, for example "2 parts Ochre and 1 part Blue". */
  public static String recipe(Recipe recipe, Kit kit) {
    List<Portion> portions = recipe.portions();
    if (portions.size() == 1) {
      return WordParts.name(kit, portions.get(0).paintId());
    }
    return Lists.and(portions.stream().map(portion -> portion(portion, kit)).toList());
  }

  /** A recipe with its wash, for example "2 parts Ochre and 1 part Blue, a little under milk". */
  public static String match(Match match, Kit kit) {
    return recipe(match.recipe(), kit) + ", " + wash(match, kit.washes());
  }

  /** How near it comes and how far to trust that, for example "near (ΔE00 4.2, est. ±9)". */
  public static String nearness(Match match, Trust trust) {
    return nearness(match.deltaE()) + " " + difference(match, trust);
  }

  /** The difference in figures, for example "(ΔE00 4.2, est. ±9)". */
  static String difference(Match match, Trust trust) {
    return String.format(Locale.ROOT, "(ΔE00 %.1f, %s)", match.deltaE(), MixWords.badge(trust));
  }

  /** A difference in words: below 3 hard to tell apart, below 6 near, above 10 clearly another. */
  public static String nearness(double deltaE) {
    if (deltaE < 3) {
      return "hard to tell apart";
    }
    if (deltaE < 6) {
      return "near";
    }
    return deltaE < 10 ? "not quite it" : "another colour";
  }

  private static String wash(Match match, WashStrengths washes) {
    String wash = PaintWords.label(match.wash());
    double times = match.load() / washes.load(match.wash());
    if (times > NOTEWORTHY) {
      return "a little thicker than " + wash;
    }
    return times < 1 / NOTEWORTHY ? "a little thinner than " + wash : wash;
  }

  private static String portion(Portion portion, Kit kit) {
    boolean whole = portion.parts() == Math.rint(portion.parts());
    String parts =
        whole
            ? String.format(Locale.ROOT, "%.0f", portion.parts())
            : String.format(Locale.ROOT, "%.1f", portion.parts());
    return "%s %s %s"
        .formatted(
            parts, portion.parts() == 1 ? "part" : "parts", WordParts.name(kit, portion.paintId()));
  }
}
