package org.panwright.print;

import java.text.Bidi;
import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes any text drawable with the faces of the papers. */
public final class Script {
  /** What stands for a letter the faces do not have: a hollow square. */
  public static final String PLACEHOLDER = "\u25A1";

  private static final Pattern CLUSTER = Pattern.compile("\\X");
  private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}\\p{Cc}]+");

  /** Joiners, variation selectors and direction marks: they have no shape of their own. */
  private static final Pattern SHAPELESS =
      Pattern.compile(
          "[\\u200B-\\u200F\\u202A-\\u202E\\u2060-\\u2069\\uFE00-\\uFE0F\\uFEFF\\u00AD]");

  private Script() {}

  /**
   * The text in one line of characters both faces have: letters and accents composed, white space
   * and line breaks single spaces, every letter, sign or emoji without a glyph one {@link
   * #PLACEHOLDER}.
   */
  public static String printable(String text) {
    String plain = SPACES.matcher(Normalizer.normalize(text, Normalizer.Form.NFC)).replaceAll(" ");
    StringBuilder drawn = new StringBuilder();
    Matcher clusters = CLUSTER.matcher(plain.strip());
    while (clusters.find()) {
      String shapes = SHAPELESS.matcher(clusters.group()).replaceAll("");
      drawn.append(shapes.codePoints().allMatch(Script::drawable) ? shapes : PLACEHOLDER);
    }
    return drawn.toString();
  }

  /** Whether {@link #printable} had to put a placeholder. */
  public static boolean isComplete(String text) {
    return !printable(text).contains(PLACEHOLDER) || text.contains(PLACEHOLDER);
  }

  /**
   * One printable line in the order its glyphs stand on paper, from left to right: right-to-left
   * stretches are reversed and their brackets mirrored (Unicode Standard Annex 9). A line with
   * letters of both kinds is one of our sentences about a name, and runs from left to right.
   */
  static String visual(String line) {
    boolean holdsLeftToRight =
        line.codePoints()
            .anyMatch(
                point ->
                    Character.getDirectionality(point) == Character.DIRECTIONALITY_LEFT_TO_RIGHT);
    Bidi bidi =
        new Bidi(
            line,
            holdsLeftToRight ? Bidi.DIRECTION_LEFT_TO_RIGHT : Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    if (bidi.isLeftToRight()) {
      return line;
    }
    int runs = bidi.getRunCount();
    byte[] levels = new byte[runs];
    String[] pieces = new String[runs];
    for (int i = 0; i < runs; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      String piece = line.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      pieces[i] = levels[i] % 2 == 0 ? piece : mirrored(piece);
    }
    Bidi.reorderVisually(levels, 0, pieces, 0, runs);
    return String.join("", pieces);
  }

  private static boolean drawable(int codePoint) {
    return Typeface.REGULAR.has(codePoint) && Typeface.BOLD.has(codePoint);
  }

  private static String mirrored(String piece) {
    String brackets = "()[]{}<>«»";
    StringBuilder turned = new StringBuilder(piece).reverse();
    for (int i = 0; i < turned.length(); i++) {
      int at = brackets.indexOf(turned.charAt(i));
      if (at >= 0) {
        turned.setCharAt(i, brackets.charAt(at ^ 1));
      }
    }
    return turned.toString();
  }
}
