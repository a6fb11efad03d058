package org.panwright.command;

import java.io.PrintStream;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.FileProblemException;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;
import org.panwright.words.FileProblemWords;

/** Opens the kits that commands are given. */
final class OpenKit {
  private OpenKit() {}

  /** The kit in a file; what had to be put right to open it is told on {@code err}. */
  static Kit at(String file, PigmentLibrary library, PrintStream err)
      throws BadUseException, FileProblemException {
    OpenedKit opened = new KitFiles(library).open(Arguments.path(file));
    for (FileProblem notice : opened.notices()) {
      err.println(FileProblemWords.sentence(notice));
    }
    return opened.kit();
  }
}
