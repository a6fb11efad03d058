package org.panwright.command;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseWords;
import org.panwright.words.NearNames;

/**
 * Reads lists of paints: names or Colour Index codes with commas between, capitals or not.
 *
 * <p>Names may hold commas themselves, so the longest known name wins.
 */
final class NamedPaints {
  private static final int NEAR = 3;

  private final List<Paint> shelf;

  NamedPaints(List<Paint> shelf) {
    this.shelf = shelf;
  }

  /** The ids of the paints in a list. */
  Set<String> read(String option, String list) throws BadUseException {
    List<String> pieces = Arrays.stream(list.split(",")).map(String::strip).toList();
    Set<String> ids = new LinkedHashSet<>();
    int at = 0;
    while (at < pieces.size()) {
      if (pieces.get(at).isEmpty()) {
        at++;
        continue;
      }
      int end = pieces.size();
      List<Paint> found = List.of();
      while (end > at && found.isEmpty()) {
        found = named(String.join(", ", pieces.subList(at, end--)));
      }
      String word = found.isEmpty() ? pieces.get(at) : "";
      if (found.isEmpty()) {
        throw new BadUseException(
            ChooseWords.unknownPaint(
                option, word, NearNames.of(word, shelf.stream().map(Paint::name).toList(), NEAR)));
      }
      if (found.size() > 1) {
        throw new BadUseException(
            ChooseWords.severalPaints(
                option,
                String.join(", ", pieces.subList(at, end + 1)),
                found.stream().map(Paint::name).toList()));
      }
      ids.add(found.get(0).id());
      at = end + 1;
    }
    return ids;
  }

  /** The paints of this name, else those of this code. */
  private List<Paint> named(String word) {
    List<Paint> byName = shelf.stream().filter(p -> p.name().equalsIgnoreCase(word)).toList();
    return byName.isEmpty()
        ? shelf.stream().filter(p -> p.codes().equalsIgnoreCase(word)).toList()
        : byName;
  }
}
