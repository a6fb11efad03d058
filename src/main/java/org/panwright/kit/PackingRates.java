package org.panwright.kit;

/**
 * How much of everything this painter gets through; what is packed for an outing follows from it.
 * Each lies in the range its {@link PackingRate} has.
 *
 * @param paintMlPerA5 paint for a painted area of one A5 sheet, in ml
 * @param waterMlPerHour water to rinse with for an hour of painting, in ml
 * @param waterMlPerA5 water for the washes of an A5 sheet, in ml
 * @param cups water cups in use at a time
 * @param cupMl how much is poured into one cup, in ml
 * @param spareSheets spare sheets for each planned one
 * @param wipesPerSheet paper tissues for each sheet
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
    PackingRate.PAINT_FOR_A5.require(paintMlPerA5);
    PackingRate.WATER_FOR_HOUR.require(waterMlPerHour);
    PackingRate.WATER_FOR_A5.require(waterMlPerA5);
    PackingRate.CUPS.require(cups);
    PackingRate.CUP.require(cupMl);
    PackingRate.SPARE_SHEETS.require(spareSheets);
    PackingRate.WIPES_FOR_SHEET.require(wipesPerSheet);
  }
}
