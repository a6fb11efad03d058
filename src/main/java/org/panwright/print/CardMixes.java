package org.panwright.print;

import java.util.List;
import org.panwright.kit.KeptMix;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.words.CardWords;

/** The mixes a key card shows. */
public final class CardMixes {
  private CardMixes() {}

  /** Those the lineup keeps whose paints are aboard, or those worth having. Any thread. */
  public static List<KeptMix> of(Occasion occasion) {
    OpticsTable table = CardMix.table(occasion.kit(), occasion.lineup(), occasion.library());
    return CardMix.kept(occasion.kit(), occasion.lineup(), table);
  }

  /** A mix by its wells, parts and paints, for example "5 + 10, 3 : 1, Ochre, Blue". */
  public static String inShort(Occasion occasion, KeptMix mix) {
    return CardWords.mixInShort(
        CardMix.wells(occasion.kit(), occasion.lineup(), mix), recipe(mix), occasion.kit());
  }

  /** The recipe of a mix. */
  public static Recipe recipe(KeptMix mix) {
    return CardMix.recipe(mix);
  }
}
