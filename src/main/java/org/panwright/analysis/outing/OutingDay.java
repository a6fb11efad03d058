package org.panwright.analysis.outing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** How an outing's date lies to today. */
public enum OutingDay {
  /** No date yet. */
  OPEN,
  /** Over. */
  PAST,
  TODAY,
  AHEAD,
  /** So far ahead that the year may be a slip of the pen: more than ten years. */
  FAR_AHEAD;

  private static final long FAR_YEARS = 10;

  /** How {@code date} lies to {@code today}. */
  public static OutingDay of(Optional<LocalDate> date, LocalDate today) {
    if (date.isEmpty()) {
      return OPEN;
    }
    int order = date.get().compareTo(today);
    if (order <= 0) {
      return order < 0 ? PAST : TODAY;
    }
    return ChronoUnit.YEARS.between(today, date.get()) >= FAR_YEARS ? FAR_AHEAD : AHEAD;
  }
}
