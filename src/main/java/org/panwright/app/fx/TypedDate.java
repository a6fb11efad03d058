package org.panwright.app.fx;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as people type them: 2027-05-15 (ISO 8601), 15.5.2027 or 15/5/2027, day before month. */
public final class TypedDate {
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})\\s*-\\s*(\\d{1,2})\\s*-\\s*(\\d{1,2})");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})\\s*([./])\\s*(\\d{1,2})\\s*\\2\\s*(\\d{4})");

  private TypedDate() {}

  /** The date in {@code text}; empty if it is none. */
  public static Optional<LocalDate> read(String text) {
    Matcher yearFirst = YEAR_FIRST.matcher(text.strip());
    if (yearFirst.matches()) {
      return date(yearFirst.group(1), yearFirst.group(2), yearFirst.group(3));
    }
    Matcher dayFirst = DAY_FIRST.matcher(text.strip());
    return dayFirst.matches()
        ? date(dayFirst.group(4), dayFirst.group(3), dayFirst.group(1))
        : Optional.empty();
  }

  private static Optional<LocalDate> date(String year, String month, String day) {
    try {
      return Optional.of(
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
