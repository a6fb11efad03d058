package org.panwright.analysis.outing;

/**
 * One paint of an outing's lineup: how much of it goes and how much of it is aboard.
 *
 * @param paintId the paint
 * @param useMl what the outing takes, 0 or more
 * @param aboardMl what lies in its wells, 0 or more
 */
public record PaintUse(String paintId, double useMl, double aboardMl) {
  /** How many such outings it lasts; infinite if none of it is used. */
  public double outings() {
    return aboardMl / useMl;
  }

  /** Whether it gives out before the outing is over. */
  public boolean runsOut() {
    return useMl > aboardMl;
  }
}
