package org.panwright.words;

import java.util.Optional;
import org.panwright.analysis.finding.AlsoSpare;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.EmptyLineup;
import org.panwright.analysis.finding.Fading;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.finding.Lopsided;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.finding.NoDark;
import org.panwright.analysis.finding.Passenger;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.finding.Wish;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

/** Sentences for the findings about a lineup. */
public final class FindingWords {
  /** What is said when there is nothing to say. */
  public static final String NOTHING_FOUND =
      "Nothing to mend: this lineup mixes all the hues your shelf can, cleanly.";

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
      return WordParts.name(kit, fading.paintId()) + " fades";
    } else if (finding instanceof NearTwins twins) {
      return "%s and %s are near twins"
          .formatted(
              WordParts.name(kit, twins.keepPaintId()), WordParts.name(kit, twins.sparePaintId()));
    } else if (finding instanceof Passenger passenger) {
      return WordParts.name(kit, passenger.earning().paintId()) + " earns little";
    } else if (finding instanceof StandIn standIn) {
      return WordParts.name(kit, standIn.paintId()) + " can be mixed";
    } else if (finding instanceof Lopsided lopsided) {
      return LopsidedWords.title(lopsided);
    } else if (finding instanceof Wish wish) {
      return WordParts.name(kit, wish.paintId()) + " is worth wishing for";
    } else if (finding instanceof Nature nature) {
      return switch (nature.effect()) {
        case WHITE -> "A white in the box";
        case HIDING_LIGHT -> "Light paints that hide";
        case MANY_PIGMENTS -> "Paints of many pigments";
      };
    } else if (finding instanceof AlsoSpare also) {
      return also.paintIds().size() == 1
          ? WordParts.name(kit, also.paintIds().get(0)) + " could be spared too"
          : "%d more could be spared, one at a time".formatted(also.paintIds().size());
    } else if (finding instanceof DriesGrey) {
      return "Some darks are dark only while wet";
    } else if (finding instanceof MuddyPaint muddy) {
      return WordParts.name(kit, muddy.paintId()) + " muddies its mixes";
    } else if (finding instanceof MuddyPairs) {
      return "Where mixes turn to mud";
    } else if (finding instanceof Metals metals) {
      return "Handle with care: "
          + Lists.and(metals.holders().keySet().stream().map(CautionWords::metal).toList());
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
      return DarkWords.noDark(dark, kit);
    } else if (finding instanceof Fading fading) {
      return fading(fading, kit);
    } else if (finding instanceof NearTwins twins) {
      return SpareWords.twins(twins, kit);
    } else if (finding instanceof AlsoSpare also) {
      return SpareWords.alsoSpare(also, kit);
    } else if (finding instanceof DriesGrey grey) {
      return DarkWords.driesGrey(grey, kit);
    } else if (finding instanceof MuddyPaint muddy) {
      return MudWords.paint(muddy, kit);
    } else if (finding instanceof MuddyPairs pairs) {
      return MudWords.pairs(pairs, kit);
    } else if (finding instanceof Passenger passenger) {
      return SpareWords.passenger(passenger.earning());
    } else if (finding instanceof StandIn standIn) {
      return SpareWords.standIn(standIn, kit);
    } else if (finding instanceof Lopsided lopsided) {
      return LopsidedWords.meaning(lopsided, kit);
    } else if (finding instanceof Wish wish) {
      return "With it this lineup would mix a cleaner %s than anything on your shelf (%.0f %% more chroma)."
              .formatted(
                  ColourWords.arc(HueGap.hues(wish.fromDeg(), wish.toDeg())),
                  100 * (wish.brought() / Math.max(0.01, wish.possible()) - 1))
          + RemedyWords.of(wish, kit);
    } else if (finding instanceof Nature nature) {
      return nature(nature, kit) + RemedyWords.of(nature, kit);
    } else if (finding instanceof Metals metals) {
      return CautionWords.meaning(metals, kit);
    }
    throw new IllegalArgumentException("no words for " + finding);
  }

  /** The label of the action that cures it, if there is one. */
  public static Optional<String> action(Finding finding, Kit kit) {
    Optional<String> label = finding.cure().map(edit -> action(edit, kit));
    return finding instanceof Wish ? label.map(l -> l + " to try it") : label;
  }

  private static String action(Edit edit, Kit kit) {
    if (edit instanceof Edit.PlacePaint place) {
      String paint = WordParts.name(kit, place.paintId());
      Lineup lineup = kit.lineup(place.lineupId()).orElseThrow();
      return lineup
          .in(place.wellId())
          .map(
              held -> "Put %s in place of %s".formatted(paint, WordParts.name(kit, held.paintId())))
          .orElse("Put %s into an empty well".formatted(paint));
    } else if (edit instanceof Edit.EmptyWell empty) {
      Lineup lineup = kit.lineup(empty.lineupId()).orElseThrow();
      return lineup
          .in(empty.wellId())
          .map(held -> "Take %s out".formatted(WordParts.name(kit, held.paintId())))
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
    String suggested = WordParts.name(kit, gap.suggestPaintId().get());
    String closes =
        "%s. %s closes %.0f %% of the gap".formatted(has, suggested, 100 * gap.closes());
    if (gap.giveUpPaintId().isEmpty()) {
      return closes + ".";
    }
    String leaving = WordParts.name(kit, gap.giveUpPaintId().get());
    return gap.cure().isPresent()
        ? "%s; %s could leave for it at the least loss.".formatted(closes, leaving)
        : "%s, but even without %s, the least loss, the box would be the poorer."
            .formatted(closes, leaving);
  }

  private static String fading(Fading fading, Kit kit) {
    return WordParts.sentence(PaintWords.label(fading.lightfastness()))
        + (fading.fugitive() ? " One of its pigments is known to fade." : "")
        + " Fine for a sketchbook kept shut, not for a wall."
        + fading
            .insteadPaintId()
            .map(
                id ->
                    " %s is lightfast and near it (ΔE00 %.0f)."
                        .formatted(WordParts.name(kit, id), fading.instead()))
            .orElse(" Nothing lightfast on your shelf comes near it.");
  }

  private static String nature(Nature nature, Kit kit) {
    String paints =
        Lists.and(nature.paintIds().stream().map(id -> WordParts.name(kit, id)).toList());
    return switch (nature.effect()) {
      case WHITE ->
          "%s turns mixes into opaque pastels; keep it apart from transparent washes."
              .formatted(paints);
      case HIDING_LIGHT ->
          "%s hides what lies below and makes mixes opaque and chalky, much as a white does; keep glazes and clear mixes free of it."
              .formatted(paints);
      case MANY_PIGMENTS ->
          "A tube of three or more pigments counts as several paints in a mix: it dulls sooner and is harder to foretell (%s)."
              .formatted(paints);
    };
  }
}
