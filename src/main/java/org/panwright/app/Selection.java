package org.panwright.app;

/** What is picked in the window: nothing, a well, a shelf paint, or a mix of two paints. */
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
}
