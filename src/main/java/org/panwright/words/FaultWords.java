package org.panwright.words;

import java.nio.file.Path;

/** Words for a fault of the program itself. */
public final class FaultWords {
  /** Title of the note. */
  public static final String TITLE = "Something went wrong inside Panwright";

  /** The machine, not the program, is at its end. */
  public static final String NO_MEMORY =
      "There is not enough memory for the last step, so it could not be finished. Your kit is still"
          + " open; save it. Use a smaller picture, or close other programs and start Panwright"
          + " again.";

  private FaultWords() {}

  /** What happened and what to do. */
  public static String sentence(String code, Path log) {
    return """
    The last step could not be finished. Your kit is still open; save it, and start Panwright again if it behaves oddly.

    If you report this, name the code %s and add the log:
    %s\
    """
        .formatted(code, log);
  }
}
