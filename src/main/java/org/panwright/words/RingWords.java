package org.panwright.words;

import org.panwright.analysis.reach.Ring;
import org.panwright.colour.HueWord;

/** What the hue ring says. */
public final class RingWords {
  public static final String TITLE = "Hue ring";
  public static final String MEANING =
      "For every hue, how far from grey the mixes get. The outline nearer the rim is the purer.";
  public static final String PARTS = "Which mixes count: all, or only light, middle or dark ones";
  public static final String KEY =
      "Grey shape: this lineup. Line around it: all you own. Marked arcs: hue gaps.";

  public static final String KEYS =
      "Left and right turn round the circle, up and down go away from grey and back; Enter mixes"
          + " the colour.";

  private RingWords() {}

  /** The name of a part of the ring. */
  public static String part(Ring.Part part) {
    return switch (part) {
      case ALL -> "all mixes";
      case LIGHT -> "light mixes";
      case MIDDLE -> "middle mixes";
      case DARK -> "dark mixes";
    };
  }

  /** The ring in a sentence, for those who cannot see it. */
  public static String summary(int paints, int gaps) {
    return "Hue ring of %d %s with %d hue %s"
        .formatted(paints, paints == 1 ? "paint" : "paints", gaps, gaps == 1 ? "gap" : "gaps");
  }

  /** A place of the circle, and how far lineup and shelf get from grey in its hue. */
  public static String reached(double hueDeg, double chroma, double lineup, double shelf) {
    return "%s This lineup reaches %.2f, all you own %.2f."
        .formatted(place(hueDeg, chroma), lineup, shelf);
  }

  /** A place of the circle, and how far two lineups get from grey in its hue. */
  public static String compared(
      double hueDeg, double chroma, String first, double one, String second, double two) {
    return "%s %s reaches %.2f, %s %.2f.".formatted(place(hueDeg, chroma), first, one, second, two);
  }

  private static String place(double hueDeg, double chroma) {
    return WordParts.sentence(
        "%s, hue %.0f°, chroma %.2f"
            .formatted(ColourWords.label(HueWord.of(hueDeg)), hueDeg, chroma));
  }
}
