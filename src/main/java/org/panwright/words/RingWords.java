package org.panwright.words;

import org.panwright.analysis.Ring;

/** What the hue ring says. */
public final class RingWords {
  public static final String TITLE = "Hue ring";
  public static final String MEANING =
      "For every hue, how far from grey the mixes get. The outline nearer the rim is the purer.";
  public static final String PARTS = "Which mixes count: all, or only light, middle or dark ones";
  public static final String KEY =
      "Grey shape: this lineup. Line around it: all you own. Marked arcs: hue gaps.";

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
}
