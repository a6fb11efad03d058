package org.panwright.paint;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * When and why optics came into use.
 *
 * @param date the day; empty if nobody noted it
 * @param reason what was done
 * @param detail the file, the sheet, the number of coats, as the program of the day said it; may be
 *     empty
 */
public record OpticsOrigin(Optional<LocalDate> date, Reason reason, String detail) {
  /** Where optics can come from. */
  public enum Reason {
    /** Estimated from the pigments' names. */
    ESTIMATED,
    /** Fitted to the coats kept with the paint. */
    FITTED,
    /** Taken from a file of readings. */
    FILE,
    /** Nobody noted it. */
    UNKNOWN
  }

  /** Optics of which nobody noted where they come from. */
  public static final OpticsOrigin UNNOTED = new OpticsOrigin(Optional.empty(), Reason.UNKNOWN, "");

  /** The estimate every paint starts with. */
  public static final OpticsOrigin ESTIMATE =
      new OpticsOrigin(Optional.empty(), Reason.ESTIMATED, "");

  public OpticsOrigin {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(detail, "detail");
  }
}
