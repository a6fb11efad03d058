package org.panwright.words;

/**
 * What the commands about filling and fitting say beside {@link FillWords} and {@link FitWords}.
 */
public final class FillCommandWords {
  /** Stands above what is taken out of the tubes. */
  public static final String TUBES = "Out of the tubes";

  /** Stands above the shopping list. */
  public static final String TO_BUY = "To buy";

  /** Stands above the prices. */
  public static final String PRICES = "A half pan costs";

  /** Stands above the refill list. */
  public static final String REFILL = "To refill before the next outing";

  /** Help for {@code fill}. */
  static final String FILL_HELP =
      """
      fill KIT [--lineup NAME] [--in-order] [--json]
          Plans how to fill the boxes from the tubes in stock (for the first lineup of every box, or
          the one named): ml for each well, layers and drying days, what is left in each tube, what
          runs short and what to buy. Scarce paint is shared evenly, or with --in-order goes to the
          first lineup first.\
      """;

  /** Help for {@code fit}. */
  static final String FIT_HELP =
      """
      fit KIT [--json]
          Says which pans sit loose in their wells, stand above the rim, or do not go in, and how many
          of each kind go in a row.\
      """;

  private FillCommandWords() {}

  /** Said when a command is given other than one kit. */
  public static String wantsOneKit(String command, int given) {
    return "%s wants one kit, %d words were given; for example: %s my.kit.json"
        .formatted(command, given, command);
  }

  /** Said of a kit without boxes. */
  public static String noBox(String kit) {
    return "The kit %s has no box; add one in the window first.".formatted(WordParts.quoted(kit));
  }

  /** Stands above the wells of a lineup. */
  public static String heading(String lineup, String box) {
    return "%s, for %s".formatted(lineup, box);
  }

  /** What filling a half pan costs. */
  public static String price(String paint, String money) {
    return "%s: %s".formatted(paint, money);
  }
}
