package org.panwright.words;

/** Words that all dialogs share. */
public final class DialogWords {
  /** The button under a note. */
  public static final String UNDERSTOOD = "All right";

  /** The button that leaves a form or question with nothing changed. */
  public static final String LEAVE = "Cancel";

  private DialogWords() {}
}
