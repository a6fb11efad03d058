package org.panwright.words;

/** What the papers to paint by hand say: mixing chart and swatch ladder. */
public final class ChartWords {
  /** How a square chart is painted. */
  public static final String SQUARE =
      "Mix the paint of the row with the paint of the column in equal strength; the outlined cells"
          + " take the paint alone. Equal strength means that both would tint the paper alike, not"
          + " equal amounts.";

  /** How a triangular chart is painted. */
  public static final String TRIANGLE =
      "Each pair once: mix the paint of the row with the paint of the column in equal strength; the"
          + " outlined cells take the paint alone.";

  /** How a chart of leaning halves is painted. */
  public static final String LEANING =
      "In each cell the paint of its row leads: about three parts of it, in strength, to one of the"
          + " column's. So each pair leans one way above the outlined cells and the other way"
          + " below.";

  /** How a chart of strong and washed-out halves is painted. */
  public static final String WASHED =
      "Equal strength in all cells: thick as cream on and above the outlined cells, thinned to"
          + " coffee below them.";

  /** What the dots are in a chart that names its washes. */
  public static final String DOTS = "The dots are predicted dry colours under D50, an estimate.";

  /** What the dots are in any other chart. */
  public static final String DOTS_OF_MILK =
      "The dots are predicted colours of dry milk washes under D50, an estimate.";

  /** What to do with the labels. */
  public static final String LABELS =
      "Cut along the lines. The low label goes on the side of the pan, the tall one under its base;"
          + " a drop of varnish or clear tape keeps water off.";

  /** Over the field across the black bar. */
  public static final String OVER_BLACK = "over black";

  /** Over the field for lifting. */
  public static final String LIFTED = "lifted";

  /** How the ladder is painted. */
  public static final String LADDER =
      "Paint each field in one stroke and let it dry. Over black: thick paint across the bar shows"
          + " how opaque it is. Lifted: paint, let dry, wet the middle and dab it off; what stays"
          + " is the stain.";

  private ChartWords() {}

  /** The title of a mixing chart. */
  public static String title(String lineup) {
    return "Mixing chart: " + lineup;
  }

  /** The title of a swatch ladder. */
  public static String ladderTitle(String lineup) {
    return "Swatch ladder: " + lineup;
  }

  /** The title of pan labels. */
  public static String labelsTitle(String lineup) {
    return "Pan labels: " + lineup;
  }

  /**
   * A dot told to who cannot see it.
   *
   * @param row labels of the wells of one paint
   * @param column labels of the wells of the other
   */
  public static String dot(String row, String column, String look) {
    return "Predicted colour of %s with %s: %s".formatted(row, column, look);
  }

  /** A title with the number of the sheet, if there are several. */
  public static String sheetTitle(String title, int sheet, int sheets) {
    return sheets == 1 ? title : "%s (sheet %d of %d)".formatted(title, sheet, sheets);
  }
}
