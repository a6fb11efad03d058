package org.panwright.kit.table;

import java.util.Arrays;
import java.util.Locale;

/**
 * One word of a closed list in a cell, as in the kit file: {@code semi-transparent}, {@code II}.
 */
final class WordCell {
  private WordCell() {}

  static String write(Enum<?> word) {
    String name = word.name();
    return name.matches("[IV]{1,3}") ? name : name.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The word in a cell, capitals, blanks and hyphens apart; the stand-in for an empty cell. */
  static <E extends Enum<E>> E read(TableColumn column, String cell, E standIn)
      throws CellFaultException {
    if (cell.isBlank()) {
      return standIn;
    }
    E[] words = standIn.getDeclaringClass().getEnumConstants();
    for (E word : words) {
      if (bare(write(word)).equals(bare(cell))) {
        return word;
      }
    }
    throw new CellFaultException(
        new CellFault.UnknownWord(
            column, cell, Arrays.stream(words).map(WordCell::write).toList()));
  }

  private static String bare(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
  }
}
