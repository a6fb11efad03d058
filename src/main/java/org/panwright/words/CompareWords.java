package org.panwright.words;

import java.util.List;

/** Words of the view that puts two lineups side by side. */
public final class CompareWords {
  public static final String TITLE = "Compare";
  public static final String FIRST = "First";
  public static final String SECOND = "Second";
  public static final String TURN_ROUND = "Change sides";
  public static final String SWAP = "One exchange";
  public static final String SWAP_MEANING =
      "The first lineup with one paint exchanged, as the second";
  public static final String OUT = "take out";
  public static final String IN = "put in";
  public static final String SHOW_SWAP = "Compare";
  public static final String OUTING = "Colours of";
  public static final String NO_OUTING = "no outing";
  public static final String OPEN = "See it in the plan";
  public static final String PAGE = "Page to print";
  public static final String PAGE_MEANING = "The comparison as one sheet, to be printed or saved";
  public static final String NOTHING =
      "There is nothing to compare yet. Make a second lineup, change one, or try one exchange.";
  public static final String PAINTS = "Paints";
  public static final String HUES = "Hues";
  public static final String COLOURS = "Colours only one of them mixes";
  public static final String DARKS = "Darks";
  public static final String SUBJECTS = "Colours of the place";
  public static final String CAUTIONS = "Cautions";
  public static final String MOVES = "To do in the real box";
  public static final String RING_KEY =
      "Shape: first. Coloured line: second. Grey line: the shelf. Outer arcs: lost; inner arcs:"
          + " won.";
  public static final String PRINTED_RING_KEY =
      "Grey line: first. Black line: second. Outer arcs: lost; inner arcs: won.";
  public static final String ONLY_HERE = "Only here:";
  public static final String NONE_ONLY_HERE = "It mixes nothing the other cannot.";
  public static final String CONTINUED = "More on the next sheet.";
  public static final String NOT_IN_IT = "not in this lineup";
  public static final String CELLS_HINT =
      "Every cell: a cream wash, the paint of the row leading 3 to 1. Arrow keys go from cell to"
          + " cell, Enter shows the mix in the plan.";

  private CompareWords() {}

  /** A lineup as it was before its last edit, or before the one named. */
  public static String before(String lineup, String edit) {
    return "%s, before: %s".formatted(lineup, WordParts.shortened(edit));
  }

  /** A lineup with one exchange. */
  public static String exchanged(String lineup, String out, String in) {
    return "%s with %s for %s".formatted(lineup, in, out);
  }

  /** What a row of sample colours is, for those who cannot see it. */
  public static String samples(int count, String lineup) {
    return "%d colours only %s mixes; left and right go through them".formatted(count, lineup);
  }

  /** Colours only one lineup mixes, for those who cannot see them. */
  public static String samplesFigure(String lineup, List<String> looks) {
    return "Colours only %s mixes: %s".formatted(lineup, String.join(", ", looks));
  }

  /** A grid for those who cannot see it: whose it is, and what is picked in it. */
  public static String grid(String lineup, String picked) {
    return picked.isEmpty() ? gridFigure(lineup) : lineup + ". " + picked;
  }

  /** A sample colour of one side for those who cannot see it. */
  public static String sample(String colour, String lineup) {
    return "%s, only in %s".formatted(colour, lineup);
  }

  /** What a cell holds on both sides, each by its look or that it is not in it. */
  public static String cell(
      String mix, String first, String firstLooks, String second, String secondLooks) {
    return "%s. %s: %s. %s: %s.".formatted(mix, first, firstLooks, second, secondLooks);
  }

  /** The title of the printed page. */
  public static String pageTitle(String first, String second) {
    return "Two lineups: %s and %s"
        .formatted(WordParts.shortened(first), WordParts.shortened(second));
  }

  /** What the page shows, for its readers' ears. */
  public static String gridFigure(String lineup) {
    return "Mix grid of " + lineup + ", cream wash, the paint of the row leading";
  }

  /** What the ring shows, for its readers' ears. */
  public static String ringFigure(String first, String second) {
    return "Hue rings of %s (grey) and %s (line)".formatted(first, second);
  }
}
