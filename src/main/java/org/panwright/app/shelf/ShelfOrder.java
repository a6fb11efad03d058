package org.panwright.app.shelf;

import java.text.CollationKey;
import java.text.Collator;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.panwright.colour.Hue;
import org.panwright.colour.HueWord;

/** The orders a shelf can be shown in. */
public enum ShelfOrder {
  /**
   * Round the box as painters lay it: by family, within it the same way round, from greenish yellow
   * over red and blue to yellow green.
   */
  HUE {
    @Override
    Comparator<ShelfRow> comparator() {
      double start = HueWord.GREENISH_YELLOW.toDeg();
      return Comparator.comparing(ShelfRow::family)
          .thenComparingDouble(row -> Hue.arc(row.tones().body().hueDeg(), start));
    }
  },
  /** From A to Z. */
  NAME {
    @Override
    Comparator<ShelfRow> comparator() {
      Collator alphabet = Collator.getInstance(Locale.UK);
      Map<String, CollationKey> keys = new HashMap<>();
      return Comparator.comparing(
          row -> keys.computeIfAbsent(row.paint().name(), alphabet::getCollationKey));
    }
  },
  /** The strongest tinter first. */
  STRENGTH {
    @Override
    Comparator<ShelfRow> comparator() {
      return Comparator.comparingDouble(row -> row.tones().tintLoad());
    }
  },
  /** The lightest masstone first. */
  LIGHTNESS {
    @Override
    Comparator<ShelfRow> comparator() {
      return Comparator.comparingDouble(row -> -row.tones().masstone().l());
    }
  };

  /** Sorts rows; rows it finds equal stay in the shelf's own order. */
  abstract Comparator<ShelfRow> comparator();
}
