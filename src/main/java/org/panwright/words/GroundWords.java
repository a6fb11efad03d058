package org.panwright.words;

import org.panwright.paint.Wash;

/** Words for the paper and the wash strengths. */
public final class GroundWords {
  /** In the menu. */
  public static final String MENU = "_Paper and wash strengths…";

  /** Title of the form. */
  public static final String TITLE = "Paper and wash strengths";

  /** Accepts it. */
  public static final String ACCEPT = "Use these";

  /** Field. */
  public static final String PAPER = "Paper";

  /** Heading of the washes. */
  public static final String WASHES = "How much paint each wash leaves, against a masstone coat";

  /** What the figures are. */
  public static final String WASHES_NOTE =
      "1 is paint straight from the pan. The names are a painter's, the figures are working values:"
          + " change them to your own hand.";

  /** Puts the first figures back. */
  public static final String USUAL = "Usual strengths";

  private GroundWords() {}

  /** Said under the washes. */
  public static String notANumber(Wash wash) {
    return "%s must be a number above 0 and up to 4, such as 0.25."
        .formatted(capital(PaintWords.label(wash)));
  }

  /** Said under the washes. */
  public static String notFalling(Wash thicker, Wash thinner) {
    return "%s must leave less paint than %s."
        .formatted(capital(PaintWords.label(thinner)), PaintWords.label(thicker));
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
