package org.panwright.words;

/** What the list of findings says around the findings themselves. */
public final class FindingListWords {
  public static final String TITLE = "Findings";
  public static final String CURE_HELP =
      "While this button has the focus or the pointer, grid and ring show what it would bring.";

  public static final String MUTE = "Mute…";
  public static final String MUTE_HELP = "Tells this finding no more for this lineup";
  public static final String WHY = "Why not? For example: I never frame these";
  public static final String MUTE_NOW = "Mute";
  public static final String KEEP = "Keep telling";
  public static final String TELL_AGAIN = "Show again";
  public static final String NO_LINEUP = "Nothing to judge yet: there is no lineup.";

  private FindingListWords() {}

  /** What the button that mutes a finding does, for a screen reader. */
  public static String mute(String title) {
    return "Mute: " + title;
  }

  /** What the button that tells a finding again does, for a screen reader. */
  public static String tellAgain(String title) {
    return TELL_AGAIN + ": " + title;
  }

  /** How many findings are muted. */
  public static String muted(int findings) {
    return findings == 1 ? "1 muted finding" : findings + " muted findings";
  }

  /** Why a finding is muted. */
  public static String reason(String reason) {
    return reason.isBlank() ? "Muted without a reason." : "Muted: " + reason;
  }

  /** How many findings there are, for the heading. */
  public static String count(int findings) {
    return findings == 0 ? "" : String.valueOf(findings);
  }
}
