package org.panwright.words;

import java.util.List;

/** Lists in a sentence. */
final class Lists {
  private Lists() {}

  /** The items with commas and a last "and"; empty for no item. */
  static String and(List<String> items) {
    return joined(items, " and ");
  }

  /** The items with commas and a last "or"; empty for no item. */
  static String or(List<String> items) {
    return joined(items, " or ");
  }

  private static String joined(List<String> items, String before) {
    int last = items.size() - 1;
    return last < 1
        ? String.join("", items)
        : String.join(", ", items.subList(0, last)) + before + items.get(last);
  }
}
