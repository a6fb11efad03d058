package org.panwright.words;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.panwright.analysis.Dark;
import org.panwright.analysis.Earning;
import org.panwright.analysis.EmptyLineup;
import org.panwright.analysis.Fading;
import org.panwright.analysis.Finding;
import org.panwright.analysis.HueGap;
import org.panwright.analysis.HueGroup;
import org.panwright.analysis.Lopsided;
import org.panwright.analysis.Metals;
import org.panwright.analysis.Nature;
import org.panwright.analysis.NearTwins;
import org.panwright.analysis.NoDark;
import org.panwright.analysis.Passenger;
import org.panwright.analysis.StandIn;
import org.panwright.analysis.Wish;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Paint;

/** Sentences for the findings about a lineup. */
public final class FindingWords {
  /** What is said when there is nothing to say. */
  public static final String NOTHING_FOUND =
      "Nothing to mend: this lineup mixes all the hues your shelf can, cleanly.";

  private static final Map<String, String> METALS =
      Map.ofEntries(
          Map.entry("Al", "aluminium"),
          Map.entry("As", "arsenic"),
          Map.entry("Ba", "barium"),
          Map.entry("Bi", "bismuth"),
          Map.entry("Cd", "cadmium"),
          Map.entry("Co", "cobalt"),
          Map.entry("Cr", "chromium"),
          Map.entry("Cu", "copper"),
          Map.entry("Hg", "mercury"),
          Map.entry("In", "indium"),
          Map.entry("Mn", "manganese"),
          Map.entry("Mo", "molybdenum"),
          Map.entry("Ni", "nickel"),
          Map.entry("Pb", "lead"),
          Map.entry("Sb", "antimony"),
          Map.entry("Se", "selenium"),
          Map.entry("Sn", "tin"),
          Map.entry("V", "vanadium"),
          Map.entry("Zn", "zinc"));

  private FindingWords() {}

  /** The finding in a few words, for a list. */
  public static String title(Finding finding, Kit kit) {
    if (finding instanceof EmptyLineup) {
      return "The box is empty";
    } else if (finding instanceof HueGap gap) {
      return "No clean " + ColourWords.arc(gap.hues());
    } else if (finding instanceof NoDark) {
      return "No real dark";
    } else if (finding instanceof Fading fading) {
      return name(kit, fading.paintId()) + " fades";
    } else if (finding instanceof NearTwins twins) {
      return "%s and %s are near twins"
          .formatted(name(kit, twins.keepPaintId()), name(kit, twins.sparePaintId()));
    } else if (finding instanceof Passenger passenger) {
      return name(kit, passenger.earning().paintId()) + " earns little";
    } else if (finding instanceof StandIn standIn) {
      return name(kit, standIn.paintId()) + " can be mixed";
    } else if (finding instanceof Lopsided lopsided) {
      return lopsided(lopsided);
    } else if (finding instanceof Wish wish) {
      return name(kit, wish.paintId()) + " is worth wishing for";
    } else if (finding instanceof Nature nature) {
      return nature.kind() == Nature.Kind.WHITE ? "A white in the box" : "Paints of many pigments";
    } else if (finding instanceof Metals metals) {
      return "Handle with care: "
          + Lists.and(metals.paintIds().keySet().stream().map(FindingWords::metal).toList());
    }
    throw new IllegalArgumentException("no words for " + finding);
  }

  /** What it means for the painter, one to three sentences. */
  public static String meaning(Finding finding, Kit kit) {
    if (finding instanceof EmptyLineup empty) {
      return empty.shelfIsEmpty()
          ? "Add the paints you own to the shelf, then put some into the box."
          : "Put paints from the shelf into the wells to see what they mix.";
    } else if (finding instanceof HueGap gap) {
      return gap(gap, kit);
    } else if (finding instanceof NoDark dark) {
      return noDark(dark, kit);
    } else if (finding instanceof Fading fading) {
      return fading(fading, kit);
    } else if (finding instanceof NearTwins twins) {
      return "They look alike thick and thin (ΔE00 %.1f and %.1f). %s earns less; its well could hold another colour."
          .formatted(twins.masstone(), twins.tint(), name(kit, twins.sparePaintId()));
    } else if (finding instanceof Passenger passenger) {
      return passenger(passenger.earning());
    } else if (finding instanceof StandIn standIn) {
      return standIn(standIn, kit);
    } else if (finding instanceof Lopsided lopsided) {
      return lopsidedMeaning(lopsided);
    } else if (finding instanceof Wish wish) {
      return "With it this lineup would mix a cleaner %s than anything on your shelf (%.0f %% more chroma)."
          .formatted(
              ColourWords.arc(HueGap.hues(wish.fromDeg(), wish.toDeg())),
              100 * (wish.brought() / Math.max(0.01, wish.possible()) - 1));
    } else if (finding instanceof Nature nature) {
      return nature(nature, kit);
    } else if (finding instanceof Metals metals) {
      return metals(metals, kit);
    }
    throw new IllegalArgumentException("no words for " + finding);
  }

  /** The label of the action that cures it, if there is one. */
  public static Optional<String> action(Finding finding, Kit kit) {
    return finding.cure().map(edit -> action(edit, kit));
  }

  private static String action(Edit edit, Kit kit) {
    if (edit instanceof Edit.PlacePaint place) {
      String paint = name(kit, place.paintId());
      Lineup lineup = kit.lineup(place.lineupId()).orElseThrow();
      return lineup
          .in(place.wellId())
          .map(held -> "Put %s in place of %s".formatted(paint, name(kit, held.paintId())))
          .orElse("Put %s into an empty well".formatted(paint));
    } else if (edit instanceof Edit.EmptyWell empty) {
      Lineup lineup = kit.lineup(empty.lineupId()).orElseThrow();
      return lineup
          .in(empty.wellId())
          .map(held -> "Take %s out".formatted(name(kit, held.paintId())))
          .orElse("Empty the well");
    }
    throw new IllegalArgumentException("no label for the cure " + edit);
  }

  private static String gap(HueGap gap, Kit kit) {
    String hues = ColourWords.arc(gap.hues());
    String has =
        gap.best() < 0.02
            ? "You mix no %s at all".formatted(hues)
            : "Your %s reaches %.0f %% of what your shelf can"
                .formatted(hues, 100 * gap.best() / gap.possible());
    if (gap.suggestPaintId().isEmpty()) {
      return has + ". No single paint of your shelf closes the gap; it takes two.";
    }
    String suggested = name(kit, gap.suggestPaintId().get());
    String closes =
        "%s. %s closes %.0f %% of the gap".formatted(has, suggested, 100 * gap.closes());
    if (gap.giveUpPaintId().isEmpty()) {
      return closes + ".";
    }
    String leaving = name(kit, gap.giveUpPaintId().get());
    return gap.cure().isPresent()
        ? "%s; %s could leave for it at the least loss.".formatted(closes, leaving)
        : "%s, but even without %s, the least loss, the box would be the poorer."
            .formatted(closes, leaving);
  }

  private static String noDark(NoDark dark, Kit kit) {
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
            .map(id -> " %s would bring L* %.0f.".formatted(name(kit, id), dark.suggestL()))
            .orElse("");
  }

  private static String fading(Fading fading, Kit kit) {
    return sentence(PaintWords.label(fading.lightfastness()))
        + (fading.fugitive() ? " One of its pigments is known to fade." : "")
        + " Fine for a sketchbook kept shut, not for a wall."
        + fading
            .insteadPaintId()
            .map(
                id ->
                    " %s is lightfast and near it (ΔE00 %.0f)."
                        .formatted(name(kit, id), fading.instead()))
            .orElse("");
  }

  private static String standIn(StandIn standIn, Kit kit) {
    return "A mix of %s comes within ΔE00 %.1f of it thick and %.1f thin, as far as the prediction goes: the same colour to the eye. It earns little else, unless you keep it for its texture or to save mixing."
        .formatted(RecipeWords.recipe(standIn.recipe(), kit), standIn.masstone(), standIn.tint());
  }

  private static String lopsided(Lopsided lopsided) {
    return switch (lopsided.side()) {
      case CROWDED ->
          "%d of %d are %s"
              .formatted(
                  lopsided.count(), lopsided.paints(), group(lopsided.group().orElseThrow()));
      case MISSING -> "No " + oneOf(lopsided.group().orElseThrow());
      case OPAQUE -> share(lopsided, "opaque");
      case STAINING -> share(lopsided, "strongly staining");
      case GRANULATING -> share(lopsided, "granulating");
    };
  }

  private static String share(Lopsided lopsided, String what) {
    return "%d of %d are %s".formatted(lopsided.count(), lopsided.paints(), what);
  }

  private static String lopsidedMeaning(Lopsided lopsided) {
    return switch (lopsided.side()) {
      case CROWDED -> "More than a third of the wells hold one kind of colour.";
      case MISSING -> "Many mixes start from one. The hue gaps say what is missing without it.";
      case OPAQUE -> "Mixes of several opaque paints turn chalky, and glazes hide what is below.";
      case STAINING -> "Little of this can be lifted again: mistakes stay.";
      case GRANULATING -> "Hardly any even wash is left; flat skies become hard.";
    };
  }

  private static String group(HueGroup group) {
    return group.name().toLowerCase(Locale.ROOT);
  }

  private static String oneOf(HueGroup group) {
    String many = group(group);
    return many.substring(0, many.length() - 1);
  }

  private static String nature(Nature nature, Kit kit) {
    String paints = Lists.and(nature.paintIds().stream().map(id -> name(kit, id)).toList());
    return switch (nature.kind()) {
      case WHITE ->
          "%s turns mixes into opaque pastels; keep it apart from transparent washes."
              .formatted(paints);
      case MANY_PIGMENTS ->
          "A tube of three or more pigments counts as several paints in a mix: it dulls sooner and is harder to foretell (%s)."
              .formatted(paints);
    };
  }

  private static String passenger(Earning earning) {
    return "Without it the lineup loses %.1f %% of its hue ring and %.1f %% of its reach: the others mix nearly all it mixes. It may still earn its well by texture or convenience."
        .formatted(100 * earning.ringLost(), 100 * earning.reachLost());
  }

  private static String metals(Metals metals, Kit kit) {
    String which =
        metals.paintIds().entrySet().stream()
            .map(
                entry ->
                    "%s in %s"
                        .formatted(
                            metal(entry.getKey()),
                            Lists.and(entry.getValue().stream().map(id -> name(kit, id)).toList())))
            .collect(Collectors.joining("; "));
    return sentence(which)
        + " Don't point the brush with your lips, don't sand or spray, wash your hands, and carry"
        + " the rinse water home rather than pouring it out. The maker's safety sheet and local"
        + " rules decide.";
  }

  private static String metal(String symbol) {
    return METALS.getOrDefault(symbol, symbol);
  }

  private static String name(Kit kit, String paintId) {
    return kit.shelf().find(paintId).map(Paint::name).map(WordParts::shortened).orElse(paintId);
  }

  private static String sentence(String text) {
    return sentenceStart(text) + ".";
  }

  private static String sentenceStart(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
