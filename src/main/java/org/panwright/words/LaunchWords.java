package org.panwright.words;

/** Words for the start of the program. */
public final class LaunchWords {
  /** Said before the report when no window can be opened. */
  public static final String NO_DISPLAY =
      "There is no display to open a window on, so here is the report on the demo kit instead.";

  private LaunchWords() {}
}
