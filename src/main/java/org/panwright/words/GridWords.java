package org.panwright.words;

import org.panwright.mixing.Ratio;

/** What the mix grid says. */
public final class GridWords {
  public static final String TITLE = "Mix grid";
  public static final String EMPTY =
      "No mixes yet. Put paints into the wells above; every pair will be mixed here.";
  public static final String WASH = "The wash every cell is painted with";
  public static final String LEANING = "Leaning";
  public static final String LEANING_MEANS =
      "In every cell the paint of the row leads, 3 strength parts to 1.";
  public static final String STRONG_AND_THIN = "Strong and thin";
  public static final String STRONG_AND_THIN_MEANS =
      "Equal strength parts: butter above the diagonal, coffee below it.";
  public static final String TRIAL = "Not done yet: the grid as it would be.";

  private GridWords() {}

  /** One paint alone. */
  public static String alone(String paint, String wash) {
    return "%s alone, %s".formatted(paint, wash);
  }

  /** One paint alone, and how it looks. */
  public static String alone(String paint, String wash, String looks) {
    return looking(alone(paint, wash), looks);
  }

  /** Two paints mixed. */
  public static String mix(String row, Ratio ratio, String column, String wash) {
    return "%s %d : %d %s, %s".formatted(row, ratio.first(), ratio.second(), column, wash);
  }

  /** Two paints mixed, and how that looks. */
  public static String mix(String row, Ratio ratio, String column, String wash, String looks) {
    return looking(mix(row, ratio, column, wash), looks);
  }

  private static String looking(String mix, String looks) {
    return mix + ": " + looks;
  }
}
