package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.panwright.swatch.coat.PaintLoad;

/**
 * The names of the paints of one or several tables. Names that differ only in capitals and small
 * letters are one paint, which goes by the spelling met first.
 */
public final class PaintNames {
  private final Map<String, List<String>> spellings = new LinkedHashMap<>();

  private PaintNames() {}

  /** The names in tables, in their order. */
  public static PaintNames of(List<CoatTable> tables) {
    PaintNames names = new PaintNames();
    tables.stream()
        .flatMap(table -> table.coats().stream())
        .flatMap(row -> row.paints().stream())
        .map(PaintLoad::paint)
        .forEach(names::note);
    return names;
  }

  /** What is the same for all spellings of a name. */
  static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private void note(String name) {
    List<String> known = spellings.computeIfAbsent(key(name), unused -> new ArrayList<>());
    if (!known.contains(name)) {
      known.add(name);
    }
  }

  /** The name a paint of these tables goes by. */
  String name(String spelling) {
    return spellings.get(key(spelling)).get(0);
  }

  /** For each paint written in several ways all of them, the name it goes by first. */
  public List<List<String>> several() {
    return spellings.values().stream().filter(ways -> ways.size() > 1).map(List::copyOf).toList();
  }
}
