package org.panwright.mixing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Paints and how much of each, in strength parts.
 *
 * <p>Order is for the reader only. Each paint occurs once.
 *
 * @param portions at least one
 */
public record Recipe(List<Portion> portions) {
  public Recipe {
    portions = List.copyOf(portions);
    if (portions.isEmpty()) {
      throw new IllegalArgumentException("a recipe needs a paint");
    }
    Set<String> ids = new HashSet<>();
    for (Portion portion : portions) {
      if (!ids.add(portion.paintId())) {
        throw new IllegalArgumentException(
            "a recipe names each paint once, twice: " + portion.paintId());
      }
    }
  }

  /** One paint alone. */
  public static Recipe of(String paintId) {
    return new Recipe(List.of(new Portion(paintId, 1)));
  }

  /** Two paints in a ratio, or one alone if they are the same. */
  public static Recipe of(String first, String second, Ratio ratio) {
    return first.equals(second) ? of(first) : of(first, ratio.first(), second, ratio.second());
  }

  /** Two paints. */
  public static Recipe of(String first, double firstParts, String second, double secondParts) {
    return new Recipe(List.of(new Portion(first, firstParts), new Portion(second, secondParts)));
  }
}
