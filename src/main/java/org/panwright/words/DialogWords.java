package org.panwright.words;

import java.nio.file.Path;

/** Words that all dialogs share. */
public final class DialogWords {
  /** The button under a note. */
  public static final String UNDERSTOOD = "All right";

  /** The button that leaves a form or question with nothing changed. */
  public static final String LEAVE = "Cancel";

  /** Title of the question before a file is replaced. */
  public static final String REPLACE_TITLE = "Replace this file?";

  /** Replaces it. */
  public static final String REPLACE = "Replace";

  private DialogWords() {}

  /** Which file would be replaced. */
  public static String replaceSentence(Path file) {
    return "“%s” is there already, in “%s”. Replacing it puts what you save now in its place."
        .formatted(file.getFileName(), file.toAbsolutePath().getParent());
  }
}
