package org.panwright.words;

import java.time.LocalDate;

/** Labels of the view of tubes and fillings, and what is wrong with what is typed there. */
public final class FillViewWords {
  /** On the button of the view. */
  public static final String FILL = "Fill";

  /** The parts of the view. */
  public static final String PARTS = "Parts of the view";

  public static final String TUBES = "Tubes";
  public static final String PLAN = "Plan";
  public static final String WHERE = "Where things are";
  public static final String PANS = "Pans and habits";

  /** Columns. */
  public static final String PAINT = "Paint";

  public static final String SIZE = "Size";
  public static final String LEFT = "Left";
  public static final String PRICE = "Price";
  public static final String OPENED = "Opened";
  public static final String NOTE = "Note";
  public static final String GIVES = "Gives";
  public static final String A_FILL = "A half pan";
  public static final String BOX = "Box";
  public static final String WELL = "Well";
  public static final String IN_IT = "In it";
  public static final String WET = "Add, wet";
  public static final String LAYERS = "Layers";
  public static final String DRY_AFTER = "Dry in";
  public static final String REMARK = "To note";
  public static final String IN_TUBES = "In tubes";
  public static final String PLACES = "Wells";
  public static final String FILLED = "Filled";
  public static final String AGE = "When";
  public static final String TOGETHER = "Two boxes together";
  public static final String BOTH = "Lineups";
  public static final String PLANNED_IN = "Planned in";
  public static final String COLOURS = "Colours";
  public static final String GAIN = "Over the better";
  public static final String OF_RING = "Of all boxes' ring";
  public static final String TWICE = "In both";
  public static final String NAME = "Name";
  public static final String OUTSIDE = "Outside, mm";
  public static final String INSIDE = "Inside, mm";
  public static final String TO_BRIM = "To the brim";

  /** Buttons. */
  public static final String ADD_TUBE = "Add tube…";

  public static final String CHANGE = "Change…";
  public static final String REMOVE = "Remove";
  public static final String FILL_PICKED = "Mark as filled";
  public static final String CLEAN = "Mark as cleaned out";
  public static final String ADD_PAN = "Add kind of pan…";
  public static final String KEEP = "Keep";
  public static final String ADD = "Add";

  /** Explains the button that fills. */
  public static final String FILL_HINT =
      "Marks the wells picked in the table as filled (all, if none is picked): they remember what"
          + " and when, and the tubes give the paint.";

  public static final String EXCHANGE = "Put pan in";

  /** Over how paint goes into a pan. */
  public static final String IN_THE_PAN = "Into the pan";

  /** Explains the button that exchanges pans. */
  public static final String EXCHANGE_HINT =
      "Puts the pans that lie beside the box into the wells picked; what was in them lies beside"
          + " the box then.";

  /** Fields. */
  public static final String CURRENCY = "Prices in";

  public static final String LINEUPS = "Lineups to fill";
  public static final String SHARE = "Share scarce paint";
  public static final String FILLED_ON = "Filled on";
  public static final String SIZE_ML = "Size, ml";
  public static final String HOW_LEFT = "Left is known";
  public static final String BY_VOLUME = "by volume";
  public static final String BY_WEIGHT = "by weight";
  public static final String LEFT_ML = "Left, ml";
  public static final String GROSS = "On the scales, g";
  public static final String EMPTY = "Empty tube, g";
  public static final String DENSITY = "Density, g/ml";
  public static final String PRICE_FULL = "Price, full tube";
  public static final String OPENED_ON = "Opened on";
  public static final String DATE_PROMPT = "2026-05-01, or empty";

  /** Headings. */
  public static final String NEW_TUBE = "New tube";

  public static final String CHANGE_TUBE = "Tube";
  public static final String NEW_PAN = "New kind of pan";
  public static final String CHANGE_PAN = "Kind of pan";
  public static final String TO_BUY = "To buy";
  public static final String REFILL = "Before the next outing";
  public static final String FIT = "Do the pans fit?";
  public static final String HABITS = "How you fill";
  public static final String TOLERANCE = "How exactly pans fit";

  /** Fields of habits and pans. */
  public static final String FULL_HEIGHT = "Full is, % of height";

  public static final String LEAST_LAYERS = "Layers";
  public static final String DRYING = "Days a layer dries";
  public static final String SHRINKAGE = "Shrinks by, %";
  public static final String DAB = "A dab, ml dry";
  public static final String RESERVE = "Refill below, %";
  public static final String MAKES_DIFFER = "Makes differ by, mm";
  public static final String LOOSE_FROM = "Loose beyond, mm";
  public static final String LENGTH = "length";
  public static final String WIDTH = "width";
  public static final String HEIGHT = "height";
  public static final String TAPER = "Floor narrower by, mm";
  public static final String BRIM = "Holds to the brim, ml";

  /** Said where there is nothing to show. */
  public static final String NO_TUBES =
      "No tubes yet. Add those you own, and the plan knows what there is.";

  public static final String NO_WELLS = "Tick a lineup that holds paints.";
  public static final String NO_PLACES = "No paint is in a well or a tube yet.";
  public static final String NO_PAIRS = "Two boxes with a lineup each are needed to pair them.";
  public static final String NO_PAINTS = "Put paints on the shelf first; a tube needs a paint.";
  public static final String NO_REFILL = "Nothing to refill.";
  public static final String DOUBLES = "Only paints in more than one well";

  /** Problems of what is typed. */
  public static final String CHOOSE_PAINT = "Choose the paint in the tube.";

  public static final String BAD_SIZE =
      "The size must be a number above 0, up to 1000 ml; 7,5 and 7.5 are the same.";
  public static final String BAD_LEFT =
      "What is left must be a number from 0 up to the size, in ml.";
  public static final String BAD_WEIGHT =
      "Weights must be numbers in grams, the empty tube no heavier than the tube as it is.";
  public static final String BAD_DENSITY =
      "Density must be a number from 0.5 to 5; tube paint is mostly near 1.3 g/ml (an estimate).";
  public static final String BAD_PRICE = "The price must be a number, not below 0, or empty.";
  public static final String BAD_DATE = "Write a day as 2026-05-01 or 1.5.2026.";
  public static final String DATE_AHEAD = "That day lies ahead of today; check the year.";
  public static final String NAME_NEEDED = "Give it a name.";
  public static final String BAD_OUTER =
      "Outside sizes must be numbers: length and width 2 to 200 mm, the length the longer; height 1"
          + " to 100 mm.";
  public static final String BAD_INNER = "Every inside size must be below the outside size.";
  public static final String BAD_TAPER = "The floor can be 0 to 10 mm narrower than the rim.";
  public static final String BAD_BRIM = "What it holds must be above 0, up to 50 ml.";
  public static final String STILL_NEEDED =
      "Full pans and half pans are always there; change their sizes instead.";

  private FillViewWords() {}

  /** A problem of a tube. */
  public static String moreThanSize(String leftMl, String sizeMl) {
    return "A tube of %s ml cannot have %s ml left.".formatted(sizeMl, leftMl);
  }

  /** A problem of a date. */
  public static String dateOutside(LocalDate first, LocalDate last) {
    return "The day must lie between %s and %s.".formatted(first, last);
  }

  /** A problem of a number. */
  public static String outside(String field, double low, double high) {
    return "“%s” must be a number from %s to %s."
        .formatted(field, WordParts.number(low), WordParts.number(high));
  }

  /** Inner sizes that do not go with what a pan is said to hold. */
  public static String measures(double measuredMl) {
    return "Its inside measures %s.".formatted(FillWords.ml(measuredMl));
  }

  /** Takes what an outing used out of the wells. */
  public static String wear(String outing) {
    return "Take the paint of “%s” out of the wells".formatted(outing);
  }

  /** Said once the paint of an outing was taken. */
  public static String taken(String outing) {
    return "The paint of “%s” is out of the wells.".formatted(outing);
  }

  /** How many half pans a tube gives. */
  public static String lineupOf(String lineup, String box) {
    return "%s (%s)".formatted(lineup, box);
  }
}
