package org.panwright.analysis.fill;

/**
 * What a fill plan takes out of one tube.
 *
 * @param tubeId the tube
 * @param paintId its paint
 * @param beforeMl wet paint in it before
 * @param usedMl wet paint taken, 0..{@code beforeMl}
 * @param fills how many half pans, filled as usual, it gives as it is before
 */
public record TubeDraw(
    String tubeId, String paintId, double beforeMl, double usedMl, double fills) {
  /** Wet paint left in it. */
  public double afterMl() {
    return beforeMl - usedMl;
  }
}
