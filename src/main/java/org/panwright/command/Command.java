package org.panwright.command;

import java.io.PrintStream;
import java.util.List;
import org.panwright.store.FileProblemException;

/** One command of the command line. */
interface Command {
  /**
   * Does it.
   *
   * @param words the arguments after the command's own name
   * @param out for the answer
   * @param err for what the user should know besides it
   * @throws BadUseException if the arguments cannot be followed
   * @throws FileProblemException if a file cannot be opened or written
   */
  void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException;
}
