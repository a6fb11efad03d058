package org.panwright.app.fill;

import java.time.LocalDate;
import java.util.Optional;
import org.panwright.app.fx.TypedDate;
import org.panwright.kit.DateSpan;
import org.panwright.words.FillViewWords;

/** Days of the past as people type them. */
final class TypedDay {
  private TypedDay() {}

  /** The day in a text; empty if it is none. */
  static Optional<LocalDate> read(String text) {
    return TypedDate.read(text);
  }

  /**
   * What is wrong with a text as a day that is not ahead.
   *
   * @param optional whether it may be left empty
   */
  static Optional<String> problem(String text, boolean optional, LocalDate today) {
    if (text.isBlank()) {
      return optional ? Optional.empty() : Optional.of(FillViewWords.BAD_DATE);
    }
    Optional<LocalDate> day = read(text);
    if (day.isEmpty()) {
      return Optional.of(FillViewWords.BAD_DATE);
    }
    if (!DateSpan.holds(day.get())) {
      return Optional.of(FillViewWords.dateOutside(DateSpan.FIRST, DateSpan.LAST));
    }
    return day.get().isAfter(today) ? Optional.of(FillViewWords.DATE_AHEAD) : Optional.empty();
  }
}
