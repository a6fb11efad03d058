package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Contradiction;
import org.panwright.analysis.choose.Proposal;
import org.panwright.analysis.choose.Reason;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.mud.Dark;
import org.panwright.kit.Aim;
import org.panwright.kit.Kit;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Paint;

/** Sentences about lineups that are proposed. */
public final class ChooseWords {
  private ChooseWords() {}

  /** What an aim is called. */
  public static String label(Aim aim) {
    return switch (aim) {
      case RING -> "clean hues";
      case REACH -> "different colours";
      case SUBJECTS -> "colours of the place";
      case DARKS -> "a deep dark";
      case TRANSPARENCY -> "transparent paints";
    };
  }

  /** What two conditions stand against each other, and what to do. */
  public static String sentence(Contradiction contradiction, Kit kit) {
    if (contradiction instanceof Contradiction.NoPlaces) {
      return "No place is asked for. Ask for at least one well or dab.";
    } else if (contradiction instanceof Contradiction.MustAndNever c) {
      return "%s must be in and must never be in. Take it from one of the two."
          .formatted(name(c.paintId(), kit));
    } else if (contradiction instanceof Contradiction.MustIsNotOwned c) {
      return mustAgainst(c.paintId(), "only what you own may be used", "it is not owned", kit);
    } else if (contradiction instanceof Contradiction.MustIsMixed c) {
      return mustAgainst(c.paintId(), "only single pigments may be used", "it has several", kit);
    } else if (contradiction instanceof Contradiction.MustHoldsCadmium c) {
      return mustAgainst(c.paintId(), "no cadmium may be used", "it holds some", kit);
    } else if (contradiction instanceof Contradiction.MustFades c) {
      return mustAgainst(
          c.paintId(),
          "lightfastness may be no worse than " + PaintWords.mark(c.floor()),
          c.rated() == Lightfastness.UNRATED
              ? "it is not rated"
              : "it is rated " + PaintWords.mark(c.rated()),
          kit);
    } else if (contradiction instanceof Contradiction.MoreMustsThanPlaces c) {
      return "%d paints must be in and there %s only %d. Ask for more wells, or free some paints."
          .formatted(c.musts(), c.places() == 1 ? "is" : "are", c.places());
    } else if (contradiction instanceof Contradiction.MoreMustsThanLimit c) {
      return "%d %s must be in and at most %d of a hue group may be. Raise that limit, or free some."
          .formatted(c.musts(), label(c.group()), c.limit());
    }
    return ofShelf(contradiction);
  }

  private static String ofShelf(Contradiction contradiction) {
    if (contradiction instanceof Contradiction.ShelfTooSmall c) {
      return "%d paints are asked for and the shelf has %d. Ask for fewer, or add paints."
          .formatted(c.places(), c.shelf());
    } else if (contradiction instanceof Contradiction.TooFewAllowed c) {
      return "%d paints are asked for and only %d of the %d on the shelf keep to the conditions. Ask for fewer, or allow more."
          .formatted(c.places(), c.allowed(), c.shelf());
    } else if (contradiction instanceof Contradiction.LimitTooTight c) {
      return "%d paints are asked for and with at most %d of a hue group only %d can be found. Ask for fewer, or raise that limit."
          .formatted(c.places(), c.limit(), c.possible());
    }
    throw new IllegalArgumentException("no words for " + contradiction);
  }

  private static String mustAgainst(String paintId, String rule, String fault, Kit kit) {
    return "%s must be in, but %s and %s. Change one of the two."
        .formatted(name(paintId, kit), rule, fault);
  }

  /** The group's name within a sentence, for example "yellows". */
  public static String label(HueGroup group) {
    return group.name().toLowerCase(Locale.ROOT);
  }

  /**
   * How good a proposal is and how sure it is that none is better.
   *
   * @param index 0 for the best
   */
  public static String worth(Choice choice, int index) {
    Proposal proposal = choice.proposals().get(index);
    String worth = "Worth %.1f of 100".formatted(100 * proposal.worth());
    String differs =
        "that differs from those above in %d %s or more"
            .formatted(choice.apart(), choice.apart() == 1 ? "paint" : "paints");
    if (proposal.provenBest()) {
      return index == 0
          ? worth + ", and no lineup under these conditions is worth more."
          : worth + ", and none %s is worth more.".formatted(differs);
    }
    if (index > 0) {
      return worth + ": the best found %s, not proven.".formatted(differs);
    }
    return choice.considered() < choice.allowed()
        ? worth + ": the best found of the paints looked at, not proven."
        : worth
            + ": the best found, not proven. At most %.1f is possible; on shelves of 48 paints tried for it, a search a hundred times as long found nothing better."
                .formatted(100 * proposal.bound());
  }

  /** Each aim's part of the worth, for example "clean hues 33.1". */
  public static String parts(Proposal proposal) {
    return java.util.Arrays.stream(Aim.values())
        .filter(aim -> proposal.byAim().get(aim) > 0)
        .map(aim -> "%s %.1f".formatted(label(aim), 100 * proposal.byAim().get(aim)))
        .collect(Collectors.joining(", "));
  }

  /** The darkest mix of a proposal. */
  public static String darkest(Proposal proposal) {
    return proposal.darkest().map(ChooseWords::dark).orElse("");
  }

  private static String dark(Dark dark) {
    return "Darkest dry mix L* %.0f.".formatted(dark.dryL());
  }

  /** Why a paint is in, for example "Cobalt blue: for clean blue; …". */
  public static String reason(Reason reason, Kit kit) {
    return name(reason.paintId(), kit) + ": " + why(reason, kit);
  }

  /** Why a paint is in, without its name. */
  public static String why(Reason reason, Kit kit) {
    List<String> parts = new ArrayList<>();
    if (reason.asked()) {
      parts.add("you asked for it");
    }
    parts.add(
        reason.aim() == Aim.RING && reason.arc().isPresent()
            ? "for clean " + arc(reason.arc().get())
            : "for "
                + label(reason.aim())
                + reason.arc().map(arc -> " and clean " + arc(arc)).orElse(""));
    parts.add("without it %.1f less".formatted(100 * reason.lost()));
    reason
        .instead()
        .ifPresent(
            id ->
                parts.add(
                    "%s in its place %.1f less"
                        .formatted(name(id, kit), 100 * reason.insteadLost())));
    return String.join("; ", parts);
  }

  private static String arc(Reason.Arc arc) {
    return ColourWords.arc(HueGap.hues(arc.fromDeg(), arc.toDeg()));
  }

  /** The paints of a proposal on one line. */
  public static String paints(Proposal proposal, Kit kit) {
    String pans = Lists.and(proposal.pans().stream().map(id -> name(id, kit)).toList());
    if (proposal.dabs().isEmpty()) {
      return pans;
    }
    String dabs = Lists.and(proposal.dabs().stream().map(id -> name(id, kit)).toList());
    return pans.isEmpty() ? "as dabs " + dabs : pans + "; as dabs " + dabs;
  }

  /** What a further proposal has in place of the best one's paints. */
  public static String exchanged(Proposal best, Proposal other, Kit kit) {
    return "%s in place of %s"
        .formatted(Lists.and(missing(other, best, kit)), Lists.and(missing(best, other, kit)));
  }

  /** A paint that is to be a dab. */
  public static String asDab(String paint) {
    return paint + " (dab)";
  }

  /**
   * How the colours of a proposal and of the lineup looked at cover each other.
   *
   * @param proposalCovered share of the proposal's colours the other mixes
   * @param lookedCovered share of the other's colours the proposal mixes
   */
  public static String covers(double proposalCovered, double lookedCovered) {
    return "It mixes %.0f %% of that lineup's colours, and %.0f %% of its own are new."
        .formatted(100 * lookedCovered, 100 * (1 - proposalCovered));
  }

  private static List<String> missing(Proposal of, Proposal in, Kit kit) {
    return of.paints().stream()
        .filter(id -> !in.paints().contains(id))
        .map(id -> name(id, kit))
        .toList();
  }

  /** What was looked at. */
  public static String looked(Choice choice) {
    String lineups =
        choice.lineups() < 1e6
            ? String.format(Locale.ROOT, "%,.0f", choice.lineups())
            : String.format(Locale.ROOT, "%.1e", choice.lineups());
    String from =
        choice.considered() == choice.allowed()
            ? "%d paints".formatted(choice.allowed())
            : "%d paints, those most unlike each other of %d"
                .formatted(choice.considered(), choice.allowed());
    return "Chosen from %s: %s %s."
        .formatted(from, lineups, choice.lineups() == 1 ? "lineup" : "lineups");
  }

  /** The number of a proposal as a heading. */
  public static String heading(int number) {
    return "Proposal " + number;
  }

  /** The name of the lineup a proposal becomes. */
  public static String lineupName(int number) {
    return "Proposed " + number;
  }

  private static String name(String paintId, Kit kit) {
    return kit.shelf().find(paintId).map(Paint::name).map(WordParts::shortened).orElse(paintId);
  }

  // What the command line says besides.

  /** {@code choose} was given no kit, or several. */
  public static String wantsOneKit(int given) {
    return given == 0
        ? "choose needs the kit file to choose from, for example: choose my.kit.json --wells 12"
        : "choose takes one kit file, %d were given; put names with spaces into quotes."
            .formatted(given);
  }

  /** A number is none, or out of range. */
  public static String badNumber(String option, String word, int from, int to) {
    return "choose: --%s takes a whole number from %d to %d, not %s."
        .formatted(option, from, to, WordParts.quoted(word));
  }

  /** Too many places in all. */
  public static String tooManyPlaces(int most) {
    return "choose: wells and dabs together may be at most %d.".formatted(most);
  }

  /** A category that does not exist. */
  public static String badLightfastness(String word) {
    return "choose: --lightfastness takes I, II or III, not %s.".formatted(WordParts.quoted(word));
  }

  /** Weights that cannot be read. */
  public static String badWeights(String word) {
    return "choose: --weights takes five numbers from 0 to 10 for ring, reach, subjects, darks and transparency, such as 4,3,2,1,1, not %s."
        .formatted(WordParts.quoted(word));
  }

  /** A list names a paint the shelf does not have. */
  public static String unknownPaint(String option, String word, List<String> near) {
    String told =
        "choose: --%s names %s, which is not on the shelf"
            .formatted(option, WordParts.quoted(word));
    return near.isEmpty()
        ? told + "; write it as it stands on the shelf."
        : told + "; did you mean " + or(near) + "?";
  }

  /** A word stands for several paints. */
  public static String severalPaints(String option, String word, List<String> found) {
    return "choose: --%s names %s, which may be %s; write the paint's name."
        .formatted(option, WordParts.quoted(word), or(found));
  }

  private static String or(List<String> names) {
    List<String> quoted = names.stream().map(WordParts::quoted).toList();
    int last = quoted.size() - 1;
    return last == 0
        ? quoted.get(0)
        : String.join(", ", quoted.subList(0, last)) + " or " + quoted.get(last);
  }

  /** The kit has no outing of this name. */
  public static String unknownOuting(String word, List<String> known) {
    return known.isEmpty()
        ? "choose: the kit has no outing, so --outing cannot name one."
        : "choose: the kit has no outing %s; it has %s."
            .formatted(
                WordParts.quoted(word), Lists.and(known.stream().map(WordParts::quoted).toList()));
  }
}
