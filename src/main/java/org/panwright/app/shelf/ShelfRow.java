package org.panwright.app.shelf;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.panwright.app.chip.Tones;
import org.panwright.kit.Well;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.words.ColourWords;
import org.panwright.words.PaintWords;
import org.panwright.words.ShelfWords;

/**
 * One paint as the shelf shows it, all worked out.
 *
 * @param paint the paint
 * @param tones its look from masstone to wash
 * @param family where it is filed
 * @param wells the wells of the lineup looked at that hold it
 * @param findable what a search looks through, in plain letters
 */
public record ShelfRow(
    Paint paint, Tones tones, HueFamily family, List<Well> wells, String findable) {
  public ShelfRow {
    wells = List.copyOf(wells);
  }

  static ShelfRow of(Paint paint, Tones tones, HueFamily family, List<Well> wells) {
    String text =
        String.join(
            " ",
            paint.name(),
            paint.maker(),
            paint.codes(),
            PaintWords.label(family),
            ColourWords.describe(tones.body()));
    return new ShelfRow(paint, tones, family, wells, ShelfQuery.plain(text));
  }

  ShelfRow with(List<Well> changed) {
    return new ShelfRow(paint, tones, family, changed, findable);
  }

  /** The second line: codes and family. */
  public String codesAndFamily() {
    return ShelfWords.codesAndFamily(paint, family);
  }

  /** The mark that it is in the lineup; empty if it is not. */
  public String place() {
    return ShelfWords.place(wells);
  }

  /** All there is to say, for those who cannot see the row. */
  public String spoken() {
    return ShelfWords.spoken(
        paint, ColourWords.describe(tones.body()), tones.source(), tones.expectedError(), wells);
  }

  /** The lines of the tooltip. */
  public String explained() {
    return ShelfWords.explained(
        paint,
        ColourWords.describe(tones.masstone()),
        ColourWords.describe(tones.body()),
        tones.source(),
        tones.expectedError(),
        tones.isExact(),
        wells);
  }

  boolean hasOneOf(Set<Enum<?>> traits) {
    Set<Enum<?>> own =
        Set.of(
            paint.ownership(),
            paint.handling().transparency(),
            paint.handling().staining(),
            paint.handling().granulation(),
            wells.isEmpty() ? Presence.NOT_IN_LINEUP : Presence.IN_LINEUP);
    return !Collections.disjoint(own, traits);
  }
}
