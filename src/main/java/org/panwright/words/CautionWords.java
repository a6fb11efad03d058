package org.panwright.words;

import java.util.Map;
import java.util.stream.Collectors;
import org.panwright.analysis.finding.Metals;
import org.panwright.kit.Kit;

/** Usual cautions for paints that hold metals; the maker's safety sheet and local rules decide. */
final class CautionWords {
  private static final Map<String, String> METALS =
      Map.ofEntries(
          Map.entry("Al", "aluminium"),
          Map.entry("As", "arsenic"),
          Map.entry("Ba", "barium"),
          Map.entry("Bi", "bismuth"),
          Map.entry("Cd", "cadmium"),
          Map.entry("Co", "cobalt"),
          Map.entry("Cr", "chromium"),
          Map.entry("Cu", "copper"),
          Map.entry("Hg", "mercury"),
          Map.entry("In", "indium"),
          Map.entry("Mn", "manganese"),
          Map.entry("Mo", "molybdenum"),
          Map.entry("Ni", "nickel"),
          Map.entry("Pb", "lead"),
          Map.entry("Sb", "antimony"),
          Map.entry("Se", "selenium"),
          Map.entry("Sn", "tin"),
          Map.entry("V", "vanadium"),
          Map.entry("Zn", "zinc"));

  private CautionWords() {}

  /** A metal by its chemical symbol; the symbol itself where there is no word. */
  static String metal(String symbol) {
    return METALS.getOrDefault(symbol, symbol);
  }

  static String meaning(Metals metals, Kit kit) {
    String which =
        metals.holders().entrySet().stream()
            .map(
                entry ->
                    "%s in %s"
                        .formatted(
                            metal(entry.getKey()),
                            Lists.and(
                                entry.getValue().stream()
                                    .map(id -> WordParts.name(kit, id))
                                    .toList())))
            .collect(Collectors.joining("; "));
    return WordParts.sentence(which)
        + RemedyWords.of(metals, kit)
        + " Don't point the brush with your lips, don't sand or spray, wash your hands, and carry"
        + " the rinse water home rather than pouring it out. The maker's safety sheet and local"
        + " rules decide.";
  }
}
