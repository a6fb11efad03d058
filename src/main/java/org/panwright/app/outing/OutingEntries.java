package org.panwright.app.outing;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.panwright.app.fx.TypedDate;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.Outing;
import org.panwright.kit.SheetSize;
import org.panwright.words.OutingWords;

/**
 * What the painter types about the outing looked at. Each entry answers what is wrong with the
 * text, empty if it was taken.
 */
final class OutingEntries {
  private final OutingModel outings;

  OutingEntries(OutingModel outings) {
    this.outings = outings;
  }

  String name(String typed) {
    if (typed.isBlank()) {
      return OutingWords.blank();
    }
    outings.change(outing -> outing.withName(typed.strip()));
    return "";
  }

  String place(String typed) {
    outings.change(outing -> outing.withPlace(typed.strip()));
    return "";
  }

  /** Nothing typed is no date yet. */
  String date(String typed) {
    Optional<LocalDate> date = TypedDate.read(typed);
    if (date.isEmpty() && !typed.isBlank()) {
      return OutingWords.noDate(typed);
    }
    outings.change(outing -> outing.withDate(date));
    return "";
  }

  String hours(String typed) {
    return number(typed, 0, 24, Outing::withHours);
  }

  String sheets(String typed) {
    return whole(typed, 0, 1000, Outing::withSheets);
  }

  String widthMm(String typed) {
    return number(
        typed,
        20,
        3000,
        (outing, mm) -> outing.withSheetSize(new SheetSize(mm, outing.sheetSize().heightMm())));
  }

  String heightMm(String typed) {
    return number(
        typed,
        20,
        3000,
        (outing, mm) -> outing.withSheetSize(new SheetSize(outing.sheetSize().widthMm(), mm)));
  }

  /** One of the rates. */
  String rate(String typed, Rate rate) {
    return rate.whole()
        ? whole(typed, rate.low(), rate.high(), (o, n) -> o.withRates(rate.put(o.rates(), n)))
        : number(typed, rate.low(), rate.high(), (o, n) -> o.withRates(rate.put(o.rates(), n)));
  }

  private String whole(
      String typed, double low, double high, BiFunction<Outing, Integer, Outing> put) {
    OptionalDouble number = TypedNumber.read(typed);
    if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
      return OutingWords.notWhole(typed);
    }
    return number(typed, low, high, (outing, n) -> put.apply(outing, (int) Math.rint(n)));
  }

  private String number(
      String typed, double low, double high, BiFunction<Outing, Double, Outing> put) {
    OptionalDouble number = TypedNumber.read(typed);
    if (number.isEmpty() || number.getAsDouble() < low || number.getAsDouble() > high) {
      return OutingWords.noNumber(typed, low, high);
    }
    outings.change(outing -> put.apply(outing, number.getAsDouble()));
    return "";
  }
}
