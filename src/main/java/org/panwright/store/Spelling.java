package org.panwright.store;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How the words of a closed list are spelt in files: {@code SEMI_OPAQUE} is "semi-opaque".
 *
 * <p>Single letters and Roman numerals stay capitals: "II", "A".
 */
final class Spelling {
  private Spelling() {}

  static String of(Enum<?> word) {
    String name = word.name();
    return name.matches("[A-CIV]{1,3}") ? name : name.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static <E extends Enum<E>> List<String> all(Class<E> words) {
    return Arrays.stream(words.getEnumConstants()).map(Spelling::of).toList();
  }
}
