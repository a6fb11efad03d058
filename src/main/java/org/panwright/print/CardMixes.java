package org.panwright.print;

import java.util.List;
import org.panwright.analysis.UsefulMix;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;

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
}
