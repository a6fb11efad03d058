package org.panwright.print;

import java.util.List;

/**
 * Several papers in one PDF, each with its own bookmark.
 *
 * @param title shown by readers in place of the file's name
 * @param parts at least one
 */
public record Bundle(String title, List<Papers> parts) {
  public Bundle {
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("a bundle needs papers");
    }
  }

  /** One kind of papers by itself. */
  public static Bundle of(Papers papers) {
    return new Bundle(papers.title(), List.of(papers));
  }
}
