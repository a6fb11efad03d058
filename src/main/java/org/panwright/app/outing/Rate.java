package org.panwright.app.outing;

import java.util.function.ToDoubleFunction;
import org.panwright.kit.PackingRate;
import org.panwright.kit.PackingRates;
import org.panwright.words.OutingWords;

/** One of the rates: its words, its range, and how it is read and changed. */
enum Rate {
  PAINT(OutingWords.PAINT_RATE, PackingRate.PAINT_FOR_A5, PackingRates::paintMlPerA5),
  HOUR(OutingWords.HOUR_RATE, PackingRate.WATER_FOR_HOUR, PackingRates::waterMlPerHour),
  SHEET(OutingWords.SHEET_RATE, PackingRate.WATER_FOR_A5, PackingRates::waterMlPerA5),
  CUPS(OutingWords.CUPS, PackingRate.CUPS, PackingRates::cups),
  CUP(OutingWords.CUP_ML, PackingRate.CUP, PackingRates::cupMl),
  SPARE(OutingWords.SPARE, PackingRate.SPARE_SHEETS, PackingRates::spareSheets),
  WIPES(OutingWords.WIPES, PackingRate.WIPES_FOR_SHEET, PackingRates::wipesPerSheet);

  private final String words;
  private final PackingRate range;
  private final ToDoubleFunction<PackingRates> get;

  Rate(String words, PackingRate range, ToDoubleFunction<PackingRates> get) {
    this.words = words;
    this.range = range;
    this.get = get;
  }

  String words() {
    return words;
  }

  double low() {
    return range.least();
  }

  double high() {
    return range.most();
  }

  /** Whether it counts things. */
  boolean whole() {
    return this == CUPS;
  }

  double get(PackingRates rates) {
    return get.applyAsDouble(rates);
  }

  /** The rates with this one at {@code value}. */
  PackingRates put(PackingRates rates, double value) {
    ToDoubleFunction<Rate> now = rate -> rate == this ? value : rate.get(rates);
    return new PackingRates(
        now.applyAsDouble(PAINT),
        now.applyAsDouble(HOUR),
        now.applyAsDouble(SHEET),
        (int) now.applyAsDouble(CUPS),
        now.applyAsDouble(CUP),
        now.applyAsDouble(SPARE),
        now.applyAsDouble(WIPES));
  }
}
