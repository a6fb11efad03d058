package org.panwright.app.dialogs;

import java.util.List;
import java.util.Locale;
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

  /**
   * The name with the ending once, which is added if it is not there yet.
   *
   * <p>Parts of an ending of several are taken for the beginning of it: choosers that offer a name
   * to be typed over leave what stands behind its last dot, so that of {@code .kit.json} only
   * {@code .json} stands behind the name typed.
   */
  public String complete(String fileName) {
    String bare = fileName;
    for (String end = endOf(bare); !end.isEmpty(); end = endOf(bare)) {
      bare = bare.substring(0, bare.length() - end.length());
    }
    return bare + ending;
  }

  /** The ending or its last part, as far as a name stands before it; else nothing. */
  private String endOf(String fileName) {
    String lower = fileName.toLowerCase(Locale.ROOT);
    return Stream.of(ending, ending.substring(ending.lastIndexOf('.')))
        .filter(end -> lower.endsWith(end) && lower.length() > end.length())
        .findFirst()
        .orElse("");
  }
}
