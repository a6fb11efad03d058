package org.panwright.print;

import java.util.List;
import org.panwright.analysis.UsefulMix;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.words.CardWords;

/** The mixes a key card shows unless the painter chooses others. */
public final class CardMixes {
  private CardMixes() {}

  /** The recipes in the order of the card. Any thread. */
  public static List<Recipe> usual(Occasion occasion) {
    OpticsTable table =
        OpticsTable.of(occasion.paints(), occasion.library(), occasion.kit().paper());
    return CardMix.useful(occasion.kit(), occasion.lineup(), table).stream()
        .map(UsefulMix::recipe)
        .distinct()
        .toList();
  }

  /** A recipe by its wells, parts and paints, for example "5 + 10, 3 : 1, Ochre, Blue". */
  public static String inShort(Occasion occasion, Recipe recipe) {
    return CardWords.mixInShort(
        CardMix.wells(occasion.kit(), occasion.lineup(), recipe), recipe, occasion.kit());
  }
}
