package org.panwright.words;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds what may have been meant by a name that is not known. */
public final class NearNames {
  private NearNames() {}

  /**
   * The known names that come near, nearest first: those that hold the word, and those that differ
   * from it by at most a third of its letters (Levenshtein 1966).
   *
   * @param most how many at most
   */
  public static List<String> of(String word, List<String> known, int most) {
    String wanted = word.strip().toLowerCase(Locale.ROOT);
    if (wanted.isEmpty()) {
      return List.of();
    }
    return known.stream()
        .distinct()
        .filter(name -> distance(wanted, name.toLowerCase(Locale.ROOT)) <= wanted.length() / 3.0)
        .sorted(Comparator.comparingDouble(name -> distance(wanted, name.toLowerCase(Locale.ROOT))))
        .limit(most)
        .toList();
  }

  /** Letters changed, put in or left out; a name that holds the word is hardly off. */
  private static double distance(String wanted, String name) {
    if (name.contains(wanted)) {
      return 0.01 * (name.length() - wanted.length()) / name.length();
    }
    int[] row = new int[name.length() + 1];
    for (int j = 0; j <= name.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= wanted.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= name.length(); j++) {
        int above = row[j];
        int changed = corner + (wanted.charAt(i - 1) == name.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(changed, 1 + Math.min(above, row[j - 1]));
        corner = above;
      }
    }
    return row[name.length()];
  }
}
