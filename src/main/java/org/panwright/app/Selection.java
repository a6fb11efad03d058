package org.panwright.app;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;

/**
 * What is picked in the window: nothing, a well, a shelf paint, a mix of two paints, or a colour.
 */
public sealed interface Selection {
  /** Nothing is picked. */
  Selection NOTHING = new Nothing();

  /** Nothing. */
  record Nothing() implements Selection {}

  /** A well of the box looked at. */
  record OfWell(String wellId) implements Selection {}

  /** A paint on the shelf. */
  record OfPaint(String paintId) implements Selection {}

  /**
   * A cell of the mix grid: row paint and column paint, which may be the same.
   *
   * @param ratio place in {@code Ratio.GRID}, first parts belong to the row paint
   */
  record OfMix(String rowPaintId, String columnPaintId, int ratio) implements Selection {}

  /**
   * A colour to be met, from a photo, the ring, a mix, a paint, or typed.
   *
   * @param lab CIELAB under D65
   * @param name where it is from, in words
   * @param withoutPaintId a paint not to be mixed with: the one whose colour it is
   * @param markedPaintIds the paints of a recipe for it, to be marked in the box
   */
  record OfColour(
      Lab lab, String name, Optional<String> withoutPaintId, List<String> markedPaintIds)
      implements Selection {
    public OfColour {
      markedPaintIds = List.copyOf(markedPaintIds);
    }

    /** The same colour with other paints marked. */
    public OfColour marking(List<String> paintIds) {
      return new OfColour(lab, name, withoutPaintId, paintIds);
    }
  }
}
