package org.panwright.words;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.panwright.colour.Hue;
import org.panwright.colour.HueWord;
import org.panwright.colour.Oklch;

/**
 * Words for colours, so that no swatch has to be understood by eye alone.
 *
 * <p>The bounds between the words are our own (common practice of the trade gives the words, not
 * the figures); they name and enter no other figure.
 */
public final class ColourWords {
  /** From this chroma a colour is called clean. */
  private static final double CLEAN_FROM = 0.16;

  /** Below this chroma a colour is called greyed. */
  private static final double GREYED_BELOW = 0.085;

  /** Below this chroma only a tinge of the hue is left. */
  private static final double TINGED_BELOW = 0.035;

  /** From this Oklab lightness a colour is called light; there little chroma is water, not grey. */
  private static final double LIGHT_FROM = 0.76;

  private ColourWords() {}

  /** The painter's word for a stretch of the hue circle, for example "bluish green". */
  public static String label(HueWord word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The words for an arc, for example "turquoise", "blue to violet". */
  public static String arc(List<HueWord> words) {
    if (words.isEmpty()) {
      return "no hue";
    }
    String first = label(words.get(0));
    String last = label(words.get(words.size() - 1));
    return switch (words.size()) {
      case 1 -> first;
      case 2 -> first + " and " + last;
      default -> first + " to " + last;
    };
  }

  /**
   * A phrase for any colour: lightness, cleanness and hue, each only where it says something.
   *
   * <p>Examples: "dark greyed green", "pale golden yellow", "brown", "light bluish grey", "black".
   */
  public static String describe(Oklch colour) {
    if (colour.isNeutral()) {
      return neutral(colour.l());
    }
    if (colour.c() < TINGED_BELOW) {
      return phrase(lightness(colour.l()), tinge(colour.hueDeg()) + " grey");
    }
    String own = ownName(colour);
    if (!own.isEmpty()) {
      return phrase(colour.l() < 0.38 ? "dark" : "", own);
    }
    boolean clean = colour.c() >= CLEAN_FROM;
    return phrase(
        clean && colour.l() >= LIGHT_FROM ? "" : lightness(colour.l()),
        clean ? "clean" : colour.c() < GREYED_BELOW && colour.l() < LIGHT_FROM ? "greyed" : "",
        label(HueWord.of(colour.hueDeg())));
  }

  private static String neutral(double l) {
    if (l < 0.28) {
      return "black";
    }
    return l > 0.94 ? "white" : phrase(lightness(l), "grey");
  }

  private static String lightness(double l) {
    if (l < 0.35) {
      return "very dark";
    }
    if (l < 0.48) {
      return "dark";
    }
    if (l < LIGHT_FROM) {
      return "";
    }
    return l < 0.88 ? "light" : "pale";
  }

  /** Names of their own that painters use for dull or dark colours of some hues. */
  private static String ownName(Oklch colour) {
    double hue = colour.hueDeg();
    boolean dull = colour.c() < 0.13;
    if (dull && hue >= 36 && hue < 85 && colour.l() < 0.62) {
      return hue < 48 ? "red brown" : "brown";
    }
    if (dull && hue >= 68 && hue < 102 && colour.l() < LIGHT_FROM) {
      return "ochre";
    }
    if (dull && hue >= 102 && hue < 126 && colour.l() < 0.65) {
      return "olive";
    }
    if (colour.l() >= LIGHT_FROM && (hue < 36 || hue >= 345) && colour.c() < CLEAN_FROM) {
      return "pink";
    }
    return "";
  }

  private static String tinge(double hueDeg) {
    double hue = Hue.normal(hueDeg);
    if (hue >= 345 || hue < 36) {
      return "reddish";
    }
    if (hue < 85) {
      return "brownish";
    }
    if (hue < 116) {
      return "yellowish";
    }
    if (hue < 188) {
      return "greenish";
    }
    return hue < 286 ? "bluish" : "violet";
  }

  private static String phrase(String... words) {
    return Stream.of(words).filter(word -> !word.isEmpty()).collect(Collectors.joining(" "));
  }
}
