package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.panwright.analysis.fill.FillLayers;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PaintDemand;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Purchase;
import org.panwright.analysis.fill.Sharing;
import org.panwright.analysis.fill.TubeDraw;
import org.panwright.analysis.outing.Refill;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.PanKind;
import org.panwright.kit.Tube;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/** What is said of tubes, fillings and what runs short, on screen, paper and command line alike. */
public final class FillWords {
  /** Stands beside every figure of filling that the painter did not set. */
  public static final String USUAL =
      "Sizes, heights and shrinkage are usual practice; makers differ. Set them to your own pans.";

  /** How paint goes into a pan. */
  public static final String HOW =
      "Press each layer into the corners, stir out separated binder, and let it dry open before the"
          + " next. A skin over a soft core leaks in the bag.";

  /** Said where nothing has to be filled. */
  public static final String NOTHING_TO_FILL = "Every well holds what it should.";

  /** Said where no paint runs short. */
  public static final String NOTHING_SHORT = "The tubes have enough of every paint.";

  private FillWords() {}

  /** A volume, for example "2.5 ml"; small ones to hundredths. */
  public static String ml(double ml) {
    return WordParts.number(round(ml)) + " ml";
  }

  /** A volume, or a dash for none. */
  public static String mlOrNone(double ml) {
    return ml > 0 ? ml(ml) : "–";
  }

  /** A sum of money in the kit's own currency, for example "12.50 crowns". */
  public static String money(double amount, String currency) {
    String figure = "%.2f".formatted(amount);
    return currency.isBlank() ? figure : figure + " " + currency;
  }

  /** How far a well is filled, in a word. */
  public static String fill(Fill fill) {
    return switch (fill) {
      case FULL -> "full";
      case HALF -> "half";
      case DAB -> "dab";
    };
  }

  /** The layers of a filling, for example "3 layers of 0.83 ml". */
  public static String layers(FillLayers layers) {
    int count = layers.poursMl().size();
    if (count == 0) {
      return "nothing";
    }
    String pour = ml(layers.poursMl().get(0));
    return count == 1 ? "1 layer of " + pour : "%d layers of %s".formatted(count, pour);
  }

  /** The same for a narrow column, for example "3 × 0.83 ml". */
  public static String layersBriefly(FillLayers layers) {
    return "%d × %s".formatted(layers.poursMl().size(), ml(layers.poursMl().get(0)));
  }

  /** Days, for example "9 days". */
  public static String days(double days) {
    return days == 1 ? "1 day" : WordParts.number(Math.rint(days * 10) / 10) + " days";
  }

  /** How long ago something was filled, for example "3 months ago"; empty if never. */
  public static String age(OptionalLong days) {
    if (days.isEmpty()) {
      return "";
    }
    long ago = days.getAsLong();
    if (ago < 0) {
      return "dated ahead of today";
    }
    if (ago < 60) {
      return ago == 0 ? "today" : ago == 1 ? "yesterday" : ago + " days ago";
    }
    return ago < 730 ? ago / 30 + " months ago" : ago / 365 + " years ago";
  }

  /** How scarce paint is shared. */
  public static String sharing(Sharing sharing) {
    return switch (sharing) {
      case EVENLY -> "evenly among the wells";
      case IN_ORDER -> "the first lineup first";
    };
  }

  /** One well of a plan as a line. */
  public static String line(PlannedWell well, Kit kit) {
    List<String> parts = new ArrayList<>();
    if (well.otherPaintId().isPresent()) {
      parts.add(exchange(well.otherPaintId().get(), kit));
    }
    pan(well).ifPresent(parts::add);
    if (isTaken(well)) {
      parts.add("nothing planned");
    } else if (well.needMl() == 0) {
      parts.add("holds enough, " + ml(well.heldMl()) + " dry");
    } else if (well.givenMl() == 0) {
      parts.add("needs " + ml(well.needMl()) + ", the tubes have none");
    } else {
      parts.add(
          "%s in %s".formatted(ml(well.givenMl()), layers(well.layers()))
              + (well.isShort() ? ", " + ml(well.shortMl()) + " short" : ""));
    }
    return "%s %s (%s, %s): %s"
        .formatted(
            wellLabel(kit, well.boxId(), well.wellId()),
            paint(well.paintId(), kit),
            pan(well, kit),
            fill(well.fill()),
            String.join("; ", parts));
  }

  /** Said of a well that two lineups of a plan fill differently. */
  public static final String SECOND_PAN = "needs a second pan";

  /** Said of a well whose pan is there, but not in it. */
  public static final String BESIDE = "its pan lies beside the box";

  /** The well a pan beside the box is cut for. */
  public static String beside(String well) {
    return "beside, for " + well;
  }

  /** Said of a dab place that two lineups of a plan fill differently. */
  public static final String TAKEN = "an earlier lineup has this dab place";

  /** What is to be said of the pan of a planned well, if it is not simply in it. */
  public static Optional<String> pan(PlannedWell well) {
    if (well.beside()) {
      return Optional.of(BESIDE);
    }
    if (!well.spare()) {
      return Optional.empty();
    }
    return Optional.of(isTaken(well) ? TAKEN : SECOND_PAN);
  }

  /** Whether it is a place without a pan that an earlier lineup of the plan fills. */
  private static boolean isTaken(PlannedWell well) {
    return well.spare() && well.panId().isEmpty();
  }

  /** Said of a well in which another paint sits. */
  public static String exchange(String otherPaintId, Kit kit) {
    return "%s in it now, exchange the pan".formatted(paint(otherPaintId, kit));
  }

  /** The same for a narrow column. */
  public static String takeOut(String otherPaintId, Kit kit) {
    return "take out %s".formatted(paint(otherPaintId, kit));
  }

  /** What is taken out of a tube as a line. */
  public static String line(TubeDraw draw, Kit kit) {
    double size = kit.stock().tube(draw.tubeId()).map(Tube::sizeMl).orElse(0.0);
    return "%s, tube of %s: %s used, %s left"
        .formatted(paint(draw.paintId(), kit), ml(size), ml(draw.usedMl()), ml(draw.afterMl()));
  }

  /** How many half pans a tube gives, for example "2.5 half pans". */
  public static String fills(double fills) {
    return WordParts.number(Math.rint(fills * 10) / 10) + " half pans";
  }

  /** A paint that runs short, with what to buy. */
  public static String shortage(PaintDemand demand, Kit kit) {
    return "%s: %s short%s"
        .formatted(
            paint(demand.paintId(), kit),
            ml(demand.shortMl()),
            demand.purchase().map(p -> "; buy " + purchase(p, kit)).orElse(""));
  }

  /** What to buy, for example "2 tubes of 5 ml for 12.40 crowns". */
  public static String purchase(Purchase purchase, Kit kit) {
    List<String> items = new ArrayList<>();
    for (Purchase.Item item : purchase.items()) {
      items.add(
          (item.count() == 1 ? "1 tube of " : item.count() + " tubes of ") + ml(item.sizeMl()));
    }
    String cost =
        purchase.cost().isPresent()
            ? " for " + money(purchase.cost().getAsDouble(), kit.stock().currency())
            : "";
    return Lists.and(items) + cost;
  }

  /** What a plan costs and how long it takes, one sentence each. */
  public static List<String> summary(FillPlan plan, Kit kit) {
    String currency = kit.stock().currency();
    List<String> sentences = new ArrayList<>();
    double wet = plan.wells().stream().mapToDouble(PlannedWell::givenMl).sum();
    if (plan.toFill().isEmpty()) {
      sentences.add(
          plan.runningShort().isEmpty()
              ? NOTHING_TO_FILL
              : "The tubes have nothing for the wells that need paint.");
    } else {
      sentences.add(
          "%s of wet paint go into %s and are dry after %s."
              .formatted(ml(wet), wells(plan.toFill().size()), days(plan.dryingDays())));
      if (plan.usedCost().isPresent() && plan.usedCost().getAsDouble() > 0) {
        sentences.add(
            "The paint used cost " + money(plan.usedCost().getAsDouble(), currency) + ".");
      }
    }
    if (plan.runningShort().isEmpty()) {
      sentences.add(NOTHING_SHORT);
    } else {
      sentences.add(
          "%s%s."
              .formatted(
                  runShort(plan.runningShort().size()),
                  plan.purchaseCost().isPresent()
                      ? costs(
                          plan.runningShort().size(), plan.purchaseCost().getAsDouble(), currency)
                      : ""));
    }
    return sentences;
  }

  private static String wells(int count) {
    return count == 1 ? "one well" : count + " wells";
  }

  private static String runShort(int paints) {
    return paints == 1 ? "One paint runs short" : paints + " paints run short";
  }

  private static String costs(int paints, double price, String currency) {
    return "; to buy %s costs %s".formatted(paints == 1 ? "it" : "them", money(price, currency));
  }

  /** A well that needs paint before an outing, as a line. */
  public static String line(Refill refill, Box box, Kit kit) {
    return "%s %s: %s"
        .formatted(label(box.find(refill.wellId())), paint(refill.paintId(), kit), why(refill));
  }

  /** Why a well needs paint. */
  public static String why(Refill refill) {
    return switch (refill.why()) {
      case EMPTY -> "empty";
      case OTHER_PAINT -> "another paint is in it";
      case BESIDE -> "its pan lies beside the box, put it in";
      case LOW -> "only %s of %s left".formatted(ml(refill.nowMl()), ml(refill.targetMl()));
      case LOW_AFTERWARDS ->
          "%s now, the outing would leave %s".formatted(ml(refill.nowMl()), ml(refill.afterMl()));
    };
  }

  /** What a well of a plan is short of. */
  public static String shortMl(PlannedWell well) {
    return ml(well.shortMl()) + " short";
  }

  /** What is left of a filling, for example "0.9 ml of 1.7". */
  public static String ofFilled(FilledWell filled) {
    return "%s of %s".formatted(ml(filled.leftMl()), WordParts.number(round(filled.filledMl())));
  }

  /** Two lineups carried together. */
  public static String together(String firstId, String secondId, Kit kit) {
    return lineup(firstId, kit) + " + " + lineup(secondId, kit);
  }

  /** Names of paints, or that there are none. */
  public static String paints(List<String> ids, Kit kit) {
    return ids.isEmpty()
        ? "none"
        : String.join(", ", ids.stream().map(id -> paint(id, kit)).toList());
  }

  /** Length, width and height, for example "19 × 15.5 × 10.5". */
  public static String extent(PanKind.Extent extent) {
    return "%s × %s × %s"
        .formatted(
            WordParts.number(extent.lengthMm()),
            WordParts.number(extent.widthMm()),
            WordParts.number(extent.heightMm()));
  }

  private static double round(double ml) {
    return Math.rint(ml * 100) / 100;
  }

  /** The name of a paint of the kit. */
  public static String paint(String paintId, Kit kit) {
    return kit.shelf().find(paintId).map(Paint::name).orElse("a paint that is gone");
  }

  /** The name of a lineup of the kit. */
  public static String lineup(String lineupId, Kit kit) {
    return kit.lineup(lineupId).map(Lineup::name).orElse("a lineup that is gone");
  }

  /** The name of a box of the kit. */
  public static String box(String boxId, Kit kit) {
    return kit.box(boxId).map(Box::name).orElse("a box that is gone");
  }

  /** A well by its label, for example "well 3" or "dab 1". */
  public static String wellLabel(Kit kit, String boxId, String wellId) {
    return label(kit.box(boxId).flatMap(box -> box.find(wellId)));
  }

  /** The bare label of a planned well, for a column of wells. */
  public static String label(Kit kit, PlannedWell planned) {
    return kit.box(planned.boxId())
        .flatMap(box -> box.find(planned.wellId()))
        .map(Well::label)
        .orElse("–");
  }

  private static String label(Optional<Well> well) {
    return well.map(Well::label)
        .map(l -> l.chars().allMatch(Character::isDigit) ? "well " + l : l)
        .orElse("a well");
  }

  /** The kind of pan in a planned well. */
  public static String pan(PlannedWell well, Kit kit) {
    return well.panId().flatMap(kit.stock()::pan).map(PanKind::name).orElse("no pan");
  }
}
