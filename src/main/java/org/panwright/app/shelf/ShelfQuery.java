package org.panwright.app.shelf;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Which paints of the shelf are shown, and in what order.
 *
 * @param text words to find in name, codes, family or hue, each of them; case and accents don't
 *     matter
 * @param order of the rows
 * @param wanted wanted traits; of each kind (ownership, transparency …) that occurs here a paint
 *     must have one
 */
public record ShelfQuery(String text, ShelfOrder order, Set<Enum<?>> wanted) {
  /** The whole shelf by hue. */
  public static final ShelfQuery ALL = new ShelfQuery("", ShelfOrder.HUE, Set.of());

  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

  public ShelfQuery {
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(order, "order");
    wanted = Set.copyOf(wanted);
  }

  /** The query with another text. */
  public ShelfQuery withText(String changed) {
    return new ShelfQuery(changed, order, wanted);
  }

  /** The query with another order. */
  public ShelfQuery withOrder(ShelfOrder changed) {
    return new ShelfQuery(text, changed, wanted);
  }

  /** The query with a trait wanted or no longer. */
  public ShelfQuery wanting(Enum<?> trait, boolean isWanted) {
    Set<Enum<?>> changed = new HashSet<>(wanted);
    if (isWanted) {
      changed.add(trait);
    } else {
      changed.remove(trait);
    }
    return new ShelfQuery(text, order, changed);
  }

  /** Whether it may hide paints. */
  public boolean isNarrow() {
    return !text.isBlank() || !wanted.isEmpty();
  }

  /** The rows it shows, in its order. */
  List<ShelfRow> select(List<ShelfRow> shelf) {
    List<String> words = List.of(plain(text).strip().split("\\s+", -1));
    Map<Class<?>, Set<Enum<?>>> byKind = new HashMap<>();
    for (Enum<?> trait : wanted) {
      byKind.computeIfAbsent(trait.getDeclaringClass(), kind -> new HashSet<>()).add(trait);
    }
    return shelf.stream()
        .filter(row -> words.stream().allMatch(row.findable()::contains))
        .filter(row -> byKind.values().stream().allMatch(row::hasOneOf))
        .sorted(order.comparator())
        .toList();
  }

  /** A text as it is compared: small letters without accents. */
  static String plain(String text) {
    String decomposed = Normalizer.normalize(text, Normalizer.Form.NFD);
    return ACCENTS.matcher(decomposed).replaceAll("").toLowerCase(Locale.ROOT);
  }
}
