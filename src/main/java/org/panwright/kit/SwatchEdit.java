package org.panwright.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Shelf;
import org.panwright.paint.Swatchbook;

/** One thing the painter does to the swatches kept with paints and to where optics come from. */
public sealed interface SwatchEdit extends Edit {
  /**
   * Keeps coats the painter painted with their paints; a coat whose id its paint knows takes the
   * place of the former one.
   *
   * @param coats by the id of their paint
   */
  record RecordSwatches(Map<String, List<PaintedCoat>> coats) implements SwatchEdit {
    public RecordSwatches {
      coats = Map.copyOf(coats);
    }

    @Override
    public Kit apply(Kit kit) {
      Shelf shelf = kit.shelf();
      for (Map.Entry<String, List<PaintedCoat>> entry : coats.entrySet()) {
        Paint paint = paint(kit, entry.getKey());
        shelf = shelf.replacing(paint.withSwatchbook(paint.swatchbook().with(entry.getValue())));
      }
      return kit.withShelf(shelf);
    }
  }

  /** Takes one coat out of what is kept with a paint. */
  record RemoveSwatch(String paintId, String coatId) implements SwatchEdit {
    @Override
    public Kit apply(Kit kit) {
      Paint paint = paint(kit, paintId);
      Swatchbook book = paint.swatchbook();
      if (book.find(coatId).isEmpty()) {
        throw new IllegalArgumentException("the paint has no coat " + coatId);
      }
      return kit.withShelf(kit.shelf().replacing(paint.withSwatchbook(book.without(coatId))));
    }
  }

  /**
   * Predicts paints from other optics from now on.
   *
   * @param optics by the id of their paint; empty to estimate it from its pigments
   * @param origin where they come from
   */
  record UseOptics(Map<String, Optional<Optics>> optics, OpticsOrigin origin)
      implements SwatchEdit {
    public UseOptics {
      optics = Map.copyOf(optics);
    }

    @Override
    public Kit apply(Kit kit) {
      Shelf shelf = kit.shelf();
      for (Map.Entry<String, Optional<Optics>> entry : optics.entrySet()) {
        shelf = shelf.replacing(paint(kit, entry.getKey()).using(entry.getValue(), origin));
      }
      return kit.withShelf(shelf);
    }
  }

  /** Keeps coats and uses what was learnt from them, in one step. */
  record LearnPaints(RecordSwatches swatches, UseOptics learnt) implements SwatchEdit {
    @Override
    public Kit apply(Kit kit) {
      return learnt.apply(swatches.apply(kit));
    }
  }

  /**
   * Predicts a paint from optics it had before.
   *
   * @param former which of its former ones, from 0
   */
  record GoBack(String paintId, int former) implements SwatchEdit {
    @Override
    public Kit apply(Kit kit) {
      Paint paint = paint(kit, paintId);
      if (former < 0 || former >= paint.swatchbook().former().size()) {
        throw new IllegalArgumentException("the paint has no former optics " + former);
      }
      return kit.withShelf(kit.shelf().replacing(paint.goingBackTo(former)));
    }
  }

  private static Paint paint(Kit kit, String id) {
    return kit.shelf()
        .find(id)
        .orElseThrow(() -> new IllegalArgumentException("the kit has no paint " + id));
  }
}
