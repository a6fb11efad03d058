package org.panwright.app.dialogs;

/**
 * A kind of file the painter picks.
 *
 * @param title over the list of files
 * @param name the kind in words
 * @param ending with its dot, for example {@code .kit.json}
 */
public record FileKind(String title, String name, String ending) {
  /** The name with the ending, which is added if it is not there yet. */
  public String complete(String fileName) {
    return fileName.toLowerCase(java.util.Locale.ROOT).endsWith(ending)
        ? fileName
        : fileName + ending;
  }
}
