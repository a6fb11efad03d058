package org.panwright.kit;

/** One of the {@link PackingRates}, with the range it lies in. */
public enum PackingRate {
  /** Paint for a painted area of one A5 sheet, in ml. */
  PAINT_FOR_A5(0, 10),
  /** Water to rinse with for an hour of painting, in ml. */
  WATER_FOR_HOUR(0, 5000),
  /** Water for the washes of an A5 sheet, in ml. */
  WATER_FOR_A5(0, 5000),
  /** Water cups in use at a time; a whole number. */
  CUPS(0, 20),
  /** How much is poured into one cup, in ml. */
  CUP(10, 5000),
  /** Spare sheets for each planned one. */
  SPARE_SHEETS(0, 10),
  /** Paper tissues for each sheet. */
  WIPES_FOR_SHEET(0, 50);

  private final int least;
  private final int most;

  PackingRate(int least, int most) {
    this.least = least;
    this.most = most;
  }

  /** The least it can be. */
  public int least() {
    return least;
  }

  /** The most it can be. */
  public int most() {
    return most;
  }

  void require(double value) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          "%s must lie in %d..%d, was %s".formatted(this, least, most, value));
    }
  }
}
