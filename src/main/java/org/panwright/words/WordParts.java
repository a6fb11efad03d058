package org.panwright.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;

/** Names and numbers as they stand inside a sentence. */
final class WordParts {
  private static final int LONGEST = 60;
  private static final char FIRST_STRONG_ISOLATE = '\u2068';
  private static final char POP_ISOLATE = '\u2069';

  private WordParts() {}

  /**
   * A name in quotation marks, shortened if it is long. A name written from right to left is fenced
   * off, so that it does not turn the sentence around it (Unicode Standard Annex 9).
   */
  static String quoted(String name) {
    String text = shortened(name);
    boolean turns =
        text.codePoints()
            .map(Character::getDirectionality)
            .anyMatch(
                d ->
                    d == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || d == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
    return turns ? "“" + FIRST_STRONG_ISOLATE + text + POP_ISOLATE + "”" : "“" + text + "”";
  }

  /**
   * A text whose line breaks, other controls and overrides of the writing direction have become
   * spaces, so that a name can neither break the line it stands in nor turn it round.
   */
  static String onOneLine(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029\\u202a-\\u202e]+", " ");
  }

  /** A text on one line, cut after 60 characters. */
  static String shortened(String text) {
    String line = onOneLine(text).strip();
    if (line.codePointCount(0, line.length()) <= LONGEST) {
      return line;
    }
    return line.substring(0, line.offsetByCodePoints(0, LONGEST - 1)).strip() + "…";
  }

  /** The name of a paint of the kit, shortened; its id if it is not there. */
  static String name(Kit kit, String paintId) {
    return kit.shelf().find(paintId).map(Paint::name).map(WordParts::shortened).orElse(paintId);
  }

  /** A phrase as a sentence: a capital first, a full stop last. */
  static String sentence(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
  }

  /** A number without superfluous digits. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return value > 0 ? "too large to read" : "too small to read";
    }
    BigDecimal rounded =
        new BigDecimal(value)
            .round(new MathContext(6, RoundingMode.HALF_EVEN))
            .stripTrailingZeros();
    boolean plain = value == 0 || (Math.abs(value) >= 1e-4 && Math.abs(value) < 1e9);
    return plain ? rounded.toPlainString() : rounded.toString();
  }
}
