package org.panwright.kit;

import java.time.LocalDate;

/** The dates a kit can hold; outside it a date is a slip of the pen. */
public final class DateSpan {
  /** The first day. */
  public static final LocalDate FIRST = LocalDate.of(1900, 1, 1);

  /** The last day. */
  public static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  private DateSpan() {}

  /** Whether a date can be meant. */
  public static boolean holds(LocalDate date) {
    return !date.isBefore(FIRST) && !date.isAfter(LAST);
  }

  static void require(String what, LocalDate date) {
    if (!holds(date)) {
      throw new IllegalArgumentException(
          "%s lies in %s..%s, was %s".formatted(what, FIRST, LAST, date));
    }
  }
}
