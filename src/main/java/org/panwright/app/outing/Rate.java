package org.panwright.app.outing;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.panwright.kit.PackingRates;
import org.panwright.words.OutingWords;

/** One of the rates: its words, its range, and how it is read and changed. */
enum Rate {
  PAINT(OutingWords.PAINT_RATE, 0, 10, false, PackingRates::paintMlPerA5, Rate::paint),
  HOUR(OutingWords.HOUR_RATE, 0, 5000, false, PackingRates::waterMlPerHour, Rate::hour),
  SHEET(OutingWords.SHEET_RATE, 0, 5000, false, PackingRates::waterMlPerA5, Rate::sheet),
  CUPS(OutingWords.CUPS, 0, 20, true, r -> (double) r.cups(), Rate::cups),
  CUP(OutingWords.CUP_ML, 10, 5000, false, PackingRates::cupMl, Rate::cup),
  SPARE(OutingWords.SPARE, 0, 10, false, PackingRates::spareSheets, Rate::spare),
  WIPES(OutingWords.WIPES, 0, 50, false, PackingRates::wipesPerSheet, Rate::wipes);

  private final String words;
  private final double low;
  private final double high;
  private final boolean whole;
  private final Function<PackingRates, Double> get;
  private final BiFunction<PackingRates, Double, PackingRates> put;

  Rate(
      String words,
      double low,
      double high,
      boolean whole,
      Function<PackingRates, Double> get,
      BiFunction<PackingRates, Double, PackingRates> put) {
    this.words = words;
    this.low = low;
    this.high = high;
    this.whole = whole;
    this.get = get;
    this.put = put;
  }

  String words() {
    return words;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  /** Whether it counts things. */
  boolean whole() {
    return whole;
  }

  double get(PackingRates rates) {
    return get.apply(rates);
  }

  BiFunction<PackingRates, Double, PackingRates> put() {
    return put;
  }

  private static PackingRates paint(PackingRates r, double n) {
    return new PackingRates(
        n,
        r.waterMlPerHour(),
        r.waterMlPerA5(),
        r.cups(),
        r.cupMl(),
        r.spareSheets(),
        r.wipesPerSheet());
  }

  private static PackingRates hour(PackingRates r, double n) {
    return new PackingRates(
        r.paintMlPerA5(),
        n,
        r.waterMlPerA5(),
        r.cups(),
        r.cupMl(),
        r.spareSheets(),
        r.wipesPerSheet());
  }

  private static PackingRates sheet(PackingRates r, double n) {
    return new PackingRates(
        r.paintMlPerA5(),
        r.waterMlPerHour(),
        n,
        r.cups(),
        r.cupMl(),
        r.spareSheets(),
        r.wipesPerSheet());
  }

  private static PackingRates cups(PackingRates r, double n) {
    return new PackingRates(
        r.paintMlPerA5(),
        r.waterMlPerHour(),
        r.waterMlPerA5(),
        (int) n,
        r.cupMl(),
        r.spareSheets(),
        r.wipesPerSheet());
  }

  private static PackingRates cup(PackingRates r, double n) {
    return new PackingRates(
        r.paintMlPerA5(),
        r.waterMlPerHour(),
        r.waterMlPerA5(),
        r.cups(),
        n,
        r.spareSheets(),
        r.wipesPerSheet());
  }

  private static PackingRates spare(PackingRates r, double n) {
    return new PackingRates(
        r.paintMlPerA5(),
        r.waterMlPerHour(),
        r.waterMlPerA5(),
        r.cups(),
        r.cupMl(),
        n,
        r.wipesPerSheet());
  }

  private static PackingRates wipes(PackingRates r, double n) {
    return new PackingRates(
        r.paintMlPerA5(),
        r.waterMlPerHour(),
        r.waterMlPerA5(),
        r.cups(),
        r.cupMl(),
        r.spareSheets(),
        n);
  }
}
