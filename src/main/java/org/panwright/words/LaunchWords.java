package org.panwright.words;

import java.nio.file.Path;

/** Words for the start of the program. */
public final class LaunchWords {
  /** Said before the report when no window can be opened. */
  public static final String NO_DISPLAY =
      "There is no display to open a window on, so here is the report on the demo kit instead.";

  private LaunchWords() {}

  /**
   * The window could not be built.
   *
   * @param log the file that says more
   */
  public static String cannotStart(Path log) {
    return "The window could not be opened because of a fault of the program. Your kits are"
        + " untouched. What happened is written in "
        + log
        + ".";
  }
}
