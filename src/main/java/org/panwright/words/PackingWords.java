package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.analysis.outing.PaintUse;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.Supply;
import org.panwright.paint.Paint;

/**
 * What to take on an outing and why, for window, paper and command line alike.
 *
 * <p>Amounts and the list to start from are common practice among people who paint outdoors.
 */
public final class PackingWords {
  /** Over the amounts. */
  public static final String NEEDS = "What it takes";

  /** Over the check list. */
  public static final String CHECK_LIST = "To pack";

  /** Over the cautions. */
  public static final String CAUTIONS = "With care";

  /** Where the figures come from. */
  public static final String BASIS =
      "Usual practice, worked out from your hours, sheets and rates. Round up when in doubt.";

  /** The rinse water, whatever is aboard. */
  public static final String RINSE_WATER =
      "Carry the rinse water home in a bottle that closes. Let it settle for a day or two, pour off"
          + " the clear part where your local rules allow, and treat the sludge as they say. Keep"
          + " it out of streams, soil and storm drains. Wiping the brush before rinsing keeps most"
          + " of the paint out of the water.";

  /** Said of any paint box. */
  public static final String HANDS =
      "Usual care: no brush between the lips, no eating with paint on the hands, paint away from"
          + " children and animals.";

  private static final List<Thing> USUAL =
      List.of(
          new Thing("box", "Paint box, filled and dry", Supply.PAINT_BOX),
          new Thing("card", "Key card of the box"),
          new Thing("refill", "Tubes to refill from", Supply.REFILL),
          new Thing("water", "Clean water", Supply.WATER),
          new Thing("dirty-water", "Bottle for the rinse water", Supply.DIRTY_WATER),
          new Thing("cups", "Water cups", Supply.CUPS),
          new Thing("paper", "Paper", Supply.PAPER),
          new Thing("scrap", "Scrap paper to try colours on"),
          new Thing("board", "Board, clips or tape"),
          new Thing("brushes", "Brushes", Supply.BRUSHES),
          new Thing("pencil", "Pencil and soft eraser"),
          new Thing("wipes", "Paper tissues", Supply.WIPES),
          new Thing("mediums", "Mediums", Supply.MEDIUMS),
          new Thing("spray", "Small spray bottle to wake the pans"),
          new Thing("seat", "Something to sit on"),
          new Thing("weather", "Hat, jacket, sun cream"),
          new Thing("food", "Food and water to drink, apart from the rinse water"),
          new Thing("bag", "Bag for rubbish"));

  private static final int FEW = 20;

  private record Thing(String id, String text, Optional<Supply> supply) {
    Thing(String id, String text) {
      this(id, text, Optional.empty());
    }

    Thing(String id, String text, Supply supply) {
      this(id, text, Optional.of(supply));
    }
  }

  private PackingWords() {}

  /** The check list of an outing: the painter's own, or as long as there is none the usual one. */
  public static List<CheckItem> checklist(Outing outing) {
    return outing.checklist().orElseGet(PackingWords::usual);
  }

  /** The check list to start from, nothing ticked. */
  public static List<CheckItem> usual() {
    return USUAL.stream()
        .map(thing -> new CheckItem(thing.id(), thing.text(), "", false, thing.supply()))
        .toList();
  }

  /** How much of what an entry stands for is needed, for example "450 ml"; empty if unknown. */
  public static String amount(CheckItem item, PackingNeeds needs, Kit kit) {
    return item.supply().map(supply -> amount(supply, needs, kit)).orElse("");
  }

  /** How much of a supply is needed. */
  public static String amount(Supply supply, PackingNeeds needs, Kit kit) {
    return switch (supply) {
      case PAINT_BOX -> paints(needs.paints().size());
      case REFILL -> refill(needs, kit);
      case WATER -> volume(needs.waterMl());
      case DIRTY_WATER -> needs.dirtyMl() > 0 ? "holds " + volume(needs.dirtyMl()) : "none needed";
      case CUPS -> cups(needs);
      case PAPER -> sheets(needs);
      case BRUSHES -> brushes(needs);
      case WIPES -> Integer.toString(needs.wipes());
      case MEDIUMS -> "if you use them: gum arabic, ox gall, masking fluid and an old brush for it";
    };
  }

  /** The amounts worked out, each a line of a name and its value. */
  public static List<Line> lines(PackingNeeds needs) {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("Paint used", volume(needs.paintMl())));
    lines.add(new Line("Clean water", volume(needs.waterMl())));
    lines.add(new Line("Rinse water bottle", volume(needs.dirtyMl()) + " or more"));
    lines.add(new Line("Water cups", cups(needs)));
    lines.add(new Line("Paper", sheets(needs)));
    lines.add(new Line("Brushes", brushes(needs)));
    lines.add(new Line("Paper tissues", Integer.toString(needs.wipes())));
    return lines;
  }

  /**
   * One amount.
   *
   * @param name what it is of
   * @param amount how much, with its unit
   */
  public record Line(String name, String amount) {}

  /** How long one paint in the box lasts, for example "0.2 ml of 2 ml: about 10 such outings". */
  public static String lasting(PaintUse use) {
    String amounts = "%s of %s".formatted(volume(use.useMl()), volume(use.aboardMl()));
    if (use.useMl() <= 0) {
      return volume(use.aboardMl()) + " aboard";
    }
    if (use.runsOut()) {
      return amounts + ": runs out on the way";
    }
    double outings = use.outings();
    return amounts
        + (outings < 2
            ? ": enough for this outing"
            : outings < FEW
                ? ": about %d such outings".formatted((int) outings)
                : ": %d or more such outings".formatted(atLeast(outings)));
  }

  /** The rates spread by a factor of two or three; more than a step would be too exact. */
  private static int atLeast(double outings) {
    return outings < 50 ? FEW : outings < 100 ? 50 : 100;
  }

  /** What has to be minded, worst first; the water last. */
  public static List<String> cautions(PackingNeeds needs, Kit kit) {
    List<String> cautions = new ArrayList<>();
    List<PaintUse> scarce = needs.runningOut();
    if (!scarce.isEmpty()) {
      cautions.add(
          "%s may run out; take the %s along or fill the box first."
              .formatted(
                  capital(Lists.and(scarce.stream().map(use -> name(kit, use.paintId())).toList())),
                  scarce.size() == 1 ? "tube" : "tubes"));
    }
    if (!needs.metals().isEmpty()) {
      cautions.add(metals(needs, kit));
    }
    if (!needs.fading().isEmpty()) {
      cautions.add(
          "%s %s: keep the sketches out of the light, or scan them soon."
              .formatted(
                  capital(Lists.and(needs.fading().stream().map(id -> name(kit, id)).toList())),
                  needs.fading().size() == 1 ? "fades" : "fade"));
    }
    if (!needs.paints().isEmpty()) {
      cautions.add(HANDS);
    }
    if (needs.waterMl() > 0 || !needs.paints().isEmpty()) {
      cautions.add(RINSE_WATER);
    }
    return cautions;
  }

  private static String metals(PackingNeeds needs, Kit kit) {
    String which =
        needs.metals().entrySet().stream()
            .map(
                entry ->
                    "%s in %s"
                        .formatted(
                            CautionWords.metal(entry.getKey()),
                            Lists.and(entry.getValue().stream().map(id -> name(kit, id)).toList())))
            .collect(Collectors.joining("; "));
    return capital(which)
        + ". Usual care: no sanding or spraying, wash your hands, and keep what settles out of the"
        + " rinse water for the collection of hazardous household waste. The maker's safety sheet"
        + " and your local rules decide.";
  }

  private static String paints(int count) {
    return count == 0 ? "no lineup chosen" : count == 1 ? "1 paint" : count + " paints";
  }

  private static String refill(PackingNeeds needs, Kit kit) {
    List<PaintUse> out = needs.runningOut();
    if (out.isEmpty()) {
      return needs.paints().isEmpty() ? "" : "not needed, all paints last";
    }
    return Lists.and(out.stream().map(use -> name(kit, use.paintId())).toList());
  }

  private static String cups(PackingNeeds needs) {
    if (needs.cups() == 0) {
      return "none";
    }
    String cups = needs.cups() == 1 ? "1" : Integer.toString(needs.cups());
    double fillings = needs.cupFillings();
    return fillings < 1.25
        ? cups
        : cups + String.format(Locale.ROOT, ", changed about %.0f ×", Math.ceil(fillings - 1));
  }

  private static String sheets(PackingNeeds needs) {
    String spare = needs.spareSheets() == 0 ? "" : " and " + needs.spareSheets() + " spare";
    return "%d%s, %s".formatted(needs.sheets(), spare, SheetWords.name(needs.sheetSize()));
  }

  private static String brushes(PackingNeeds needs) {
    return "one about %s mm wide for washes, a middle one, a fine one"
        .formatted(WordParts.number(needs.washBrushMm()));
  }

  /** "0.14 ml", "450 ml", "1.2 l". */
  public static String volume(double ml) {
    if (ml >= 1000) {
      return trimmed(ml / 1000, 2) + " l";
    }
    if (ml >= 10) {
      return trimmed(ml, 0) + " ml";
    }
    if (ml > 0 && ml < 0.0005) {
      return "under 0.001 ml";
    }
    return trimmed(ml, ml < 0.1 ? 3 : 2) + " ml";
  }

  private static String trimmed(double number, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", number);
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }

  private static String name(Kit kit, String paintId) {
    return kit.shelf().find(paintId).map(Paint::name).map(WordParts::shortened).orElse(paintId);
  }

  private static String capital(String text) {
    int first = text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }
}
