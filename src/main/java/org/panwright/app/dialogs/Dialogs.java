package org.panwright.app.dialogs;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Every question and note to the painter goes through here.
 *
 * <p>An interface so that what is asked can be tested without a window. All calls wait for the
 * painter and are made on the JavaFX thread.
 */
public interface Dialogs {
  /** Tells something that has to be known before going on. */
  void tell(String title, String sentence);

  /**
   * Asks for one of a few answers.
   *
   * @param choices exactly one plays the part {@link Choice.Role#LEAVE}, whose value is also given
   *     when the painter closes the question
   */
  <T> T ask(String title, String sentence, List<Choice<T>> choices);

  /** Shows a form; empty if the painter leaves it. */
  <R> Optional<R> fillIn(Form<R> form);

  /** Asks for a file to read. */
  Optional<Path> chooseToOpen(FileKind kind, Optional<Path> folder);

  /** Asks for a file to write; the answer carries the ending of its kind. */
  Optional<Path> chooseToSave(FileKind kind, Optional<Path> folder, String suggestedName);
}
