package org.panwright.app.dialogs;

import java.util.List;
import java.util.stream.Stream;

/**
 * A kind of file the painter picks.
 *
 * @param title over the list of files
 * @param name the kind in words
 * @param ending with its dot, for example {@code .kit.json}
 * @param alsoEnding other endings of files of the kind, with their dots
 */
public record FileKind(String title, String name, String ending, List<String> alsoEnding) {
  public FileKind {
    alsoEnding = List.copyOf(alsoEnding);
  }

  /** A kind of one ending. */
  public FileKind(String title, String name, String ending) {
    this(title, name, ending, List.of());
  }

  /** All its endings as file choosers want them, for example {@code *.png}. */
  List<String> patterns() {
    return Stream.concat(Stream.of(ending), alsoEnding.stream()).map(e -> "*" + e).toList();
  }

  /** The name with the ending, which is added if it is not there yet. */
  public String complete(String fileName) {
    return fileName.toLowerCase(java.util.Locale.ROOT).endsWith(ending)
        ? fileName
        : fileName + ending;
  }
}
