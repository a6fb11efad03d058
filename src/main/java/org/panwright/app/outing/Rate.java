package org.panwright.app.outing;

import java.util.function.ToDoubleFunction;
import org.panwright.kit.PackingRates;
import org.panwright.words.OutingWords;

/** One of the rates: its words, its range, and how it is read and changed. */
enum Rate {
  PAINT(OutingWords.PAINT_RATE, 0, 10, false, PackingRates::paintMlPerA5),
  HOUR(OutingWords.HOUR_RATE, 0, 5000, false, PackingRates::waterMlPerHour),
  SHEET(OutingWords.SHEET_RATE, 0, 5000, false, PackingRates::waterMlPerA5),
  CUPS(OutingWords.CUPS, 0, 20, true, PackingRates::cups),
  CUP(OutingWords.CUP_ML, 10, 5000, false, PackingRates::cupMl),
  SPARE(OutingWords.SPARE, 0, 10, false, PackingRates::spareSheets),
  WIPES(OutingWords.WIPES, 0, 50, false, PackingRates::wipesPerSheet);

  private final String words;
  private final double low;
  private final double high;
  private final boolean whole;
  private final ToDoubleFunction<PackingRates> get;

  Rate(String words, double low, double high, boolean whole, ToDoubleFunction<PackingRates> get) {
    this.words = words;
    this.low = low;
    this.high = high;
    this.whole = whole;
    this.get = get;
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
