package org.panwright.words;

import org.panwright.analysis.arrange.Arrangement;
import org.panwright.analysis.arrange.WellOrder;

/** Words for laying a lineup into its wells. */
public final class ArrangeWords {
  public static final String MENU = "_Arrange the lineup…";
  public static final String LINE = "Arrange the lineup…";
  public static final String TITLE = "Arrange the lineup";
  public static final String ORDER = "Order";
  public static final String LEFT_HAND = "For the left hand: the order runs as in a mirror";
  public static final String PIN =
      "Press a well to keep its paint where it is; press it again to let it move.";
  public static final String ACCEPT = "Arrange";
  public static final String EMPTY = "The lineup is empty; there is nothing to arrange.";
  public static final String WORKING = "Working it out…";

  private ArrangeWords() {}

  /** The name of an order. */
  public static String label(WellOrder order) {
    return switch (order) {
      case HUE -> "by hue, then earths and neutrals";
      case WARM_TO_COOL -> "warm to cool";
      case LIGHT_TO_DARK -> "light to dark";
      case KIND_NEIGHBOURS -> "stainers away from light, weak paints";
      case AS_THEY_ARE -> "as they are now";
    };
  }

  /** What the order costs now and then, and whether it can be better. */
  public static String cost(WellOrder order, Arrangement laid) {
    String unit = unit(order);
    String told =
        "%s: %s now, %s then.".formatted(unit, number(laid.before()), number(laid.cost()));
    if (laid.isBest()) {
      return told + " No order does better.";
    }
    return told + " The best would be between %s and that.".formatted(number(laid.bound()));
  }

  private static String unit(WellOrder order) {
    return switch (order) {
      case HUE -> "Steps back along the hues, in degrees";
      case WARM_TO_COOL -> "Steps back from cool to warm, in hundredths of chroma";
      case LIGHT_TO_DARK -> "Steps back from dark to light, in L*";
      case KIND_NEIGHBOURS -> "Harm between neighbours";
      case AS_THEY_ARE -> "Wells out of order";
    };
  }

  private static String number(double cost) {
    return cost >= 10 ? "%.0f".formatted(cost) : "%.2f".formatted(cost).replaceAll("\\.?0+$", "");
  }

  /** How many wells keep their paint. */
  public static String pinned(int wells) {
    return wells == 0 ? PIN : "%d %s kept. ".formatted(wells, wells == 1 ? "well" : "wells") + PIN;
  }
}
