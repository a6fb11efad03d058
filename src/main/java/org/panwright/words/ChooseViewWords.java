package org.panwright.words;

import org.panwright.kit.PaintWish;
import org.panwright.paint.Paint;

/** Words of the view that proposes lineups. */
public final class ChooseViewWords {
  public static final String TITLE = "Choose";
  public static final String PURPOSE =
      "Which paints of the shelf make the best lineup? Say what has to hold; the program proposes.";
  public static final String WELLS = "In pans";
  public static final String DABS = "As dabs";
  public static final String MOST = "Of a hue group";
  public static final String NO_LIMIT = "any number";
  public static final String OWNED = "Only what I own";
  public static final String SINGLE = "Only single pigments";
  public static final String NO_CADMIUM = "No cadmium";
  public static final String FLOOR = "Lightfastness";
  public static final String ANY_LIGHTFASTNESS = "any";
  public static final String OUTING = "Colours of";
  public static final String NO_OUTING = "no outing";
  public static final String WEIGHTS = "What counts";
  public static final String PAINTS = "Each paint";
  public static final String PAINTS_HELP =
      "Choose in its row, or go to a row and press left or right.";
  public static final String CHANGED =
      "What is asked has changed since. Propose again to see what follows.";
  public static final String FREE = "free";
  public static final String MUST = "must be in";
  public static final String KEPT = "stays where it is";
  public static final String NEVER = "never";
  public static final String PROPOSE = "Propose lineups";
  public static final String STOP = "Stop";
  public static final String MAKE = "Make it a lineup";
  public static final String NO_BOX = "There is no lineup to take the box from. Make one first.";
  public static final String NO_ROOM =
      "The box has fewer wells than this proposal has paints. Ask for fewer.";
  public static final String STOPPED = "Stopped.";
  public static final String START =
      "No proposal yet. Say on the left what has to hold, then press “Propose lineups”; the paints"
          + " come from your shelf.";
  public static final String RING_KEY =
      "Shape: the lineup looked at. Coloured line: the proposal. Outer arcs: given up; inner arcs:"
          + " won.";
  public static final String AGAINST = "Against the lineup looked at";
  public static final String WHY = "Why each paint is in";

  private ChooseViewWords() {}

  /** What is told of a paint of a proposal. */
  public static String chip(Paint paint, String trust) {
    return "%s  %s\n%s".formatted(paint.name(), paint.codes(), trust);
  }

  /** What is said of a paint. */
  public static String wish(PaintWish wish) {
    return switch (wish) {
      case FREE -> FREE;
      case MUST -> MUST;
      case KEPT -> KEPT;
      case NEVER -> NEVER;
    };
  }

  /** What is said of a paint, for the ear. */
  public static String said(String paint, PaintWish wish) {
    return paint + ": " + wish(wish);
  }

  /** At most so many. */
  public static String atMost(int count) {
    return "at most " + count;
  }

  /** The worst category allowed. */
  public static String orBetter(String category) {
    return category + (category.equals("I") ? "" : " or better");
  }

  /** The best so far while it runs. */
  public static String soFar(double worth, String paints) {
    return "Best so far, worth %.1f: %s".formatted(100 * worth, paints);
  }
}
