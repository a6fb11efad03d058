package org.panwright.kit;

/**
 * How much of everything this painter gets through; what is packed for an outing follows from it.
 *
 * @param paintMlPerA5 paint for a painted area of one A5 sheet, 0..10 ml
 * @param waterMlPerHour water to rinse with for an hour of painting, 0..5000 ml
 * @param waterMlPerA5 water for the washes of an A5 sheet, 0..5000 ml
 * @param cups water cups in use at a time, 0..20
 * @param cupMl how much is poured into one cup, 10..5000 ml
 * @param spareSheets spare sheets for each planned one, 0..10
 * @param wipesPerSheet paper tissues for each sheet, 0..50
 */
public record PackingRates(
    double paintMlPerA5,
    double waterMlPerHour,
    double waterMlPerA5,
    int cups,
    double cupMl,
    double spareSheets,
    double wipesPerSheet) {
  /**
   * Common practice, in the middle of its spread: 0.02–0.05 ml of paint for an A5 sheet of light
   * washes; 100–250 ml of water for half a day of small sketches and 500–1000 ml for large sheets;
   * two cups, one to wash the brush in and one clean.
   */
  public static final PackingRates USUAL = new PackingRates(0.035, 30, 20, 2, 80, 0.25, 2);

  public PackingRates {
    requireIn("paint for an A5 sheet", paintMlPerA5, 0, 10);
    requireIn("water for an hour", waterMlPerHour, 0, 5000);
    requireIn("water for an A5 sheet", waterMlPerA5, 0, 5000);
    requireIn("cups", cups, 0, 20);
    requireIn("a cup", cupMl, 10, 5000);
    requireIn("spare sheets", spareSheets, 0, 10);
    requireIn("wipes for a sheet", wipesPerSheet, 0, 50);
  }

  private static void requireIn(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          "%s must lie in %s..%s, was %s".formatted(what, low, high, value));
    }
  }
}
