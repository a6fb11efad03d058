package org.panwright.words;

/** What the list of findings says around the findings themselves. */
public final class FindingListWords {
  public static final String TITLE = "Findings";
  public static final String CURE_HELP =
      "While this button has the focus or the pointer, grid and ring show what it would bring.";

  private FindingListWords() {}

  /** How many findings there are, for the heading. */
  public static String count(int findings) {
    return findings == 0 ? "" : String.valueOf(findings);
  }
}
