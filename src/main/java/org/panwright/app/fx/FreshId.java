package org.panwright.app.fx;

import java.util.Set;

/** Ids for things the painter adds. */
public final class FreshId {
  private FreshId() {}

  /** The first of {@code stem-1}, {@code stem-2}… that is not taken. */
  public static String of(String stem, Set<String> taken) {
    int number = 1;
    while (taken.contains(stem + "-" + number)) {
      number++;
    }
    return stem + "-" + number;
  }
}
