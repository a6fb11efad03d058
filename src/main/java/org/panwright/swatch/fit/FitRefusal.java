package org.panwright.swatch.fit;

/** Why swatches cannot be turned into optics: facts for a sentence, no sentence. */
public sealed interface FitRefusal {
  /** There is no swatch at all. */
  record NoSwatches() implements FitRefusal {}

  /** All swatches have the same colour although their paints or loads differ. */
  record AllAlike() implements FitRefusal {}

  /**
   * The coats of a paint cannot be told from what lies beneath them.
   *
   * @param paint whose coats they are
   */
  record NoMark(String paint) implements FitRefusal {}

  /**
   * The bare paper of a swatch is darker than any white paper, so the readings are of something
   * else.
   *
   * @param lightest the highest L* of any ground
   */
  record NoPaper(double lightest) implements FitRefusal {}

  /**
   * The loads are so small or large that they cannot be meant.
   *
   * @param usual their geometric mean
   */
  record LoadsOutOfScale(double usual) implements FitRefusal {}

  /**
   * A coat is lighter than the paper it lies on over the whole spectrum, so one of the two readings
   * is of something else.
   *
   * @param name the swatch
   */
  record LighterThanGround(String name) implements FitRefusal {}
}
