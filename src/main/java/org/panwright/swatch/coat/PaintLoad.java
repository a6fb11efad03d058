package org.panwright.swatch.coat;

/**
 * How much of one paint lies in a coat.
 *
 * @param paint the paint's id or name; the same text is the same paint
 * @param load paint per area, above 0; any unit, the same throughout a {@link SwatchSet}
 */
public record PaintLoad(String paint, double load) {
  public PaintLoad {
    if (paint.isBlank()) {
      throw new IllegalArgumentException("a load names its paint");
    }
    if (!(load > 0 && Double.isFinite(load))) {
      throw new IllegalArgumentException("a load must be above 0, was " + load);
    }
  }
}
