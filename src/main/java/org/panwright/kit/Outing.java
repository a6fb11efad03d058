package org.panwright.kit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A planned day of painting.
 *
 * @param id unique in the kit, never changed
 * @param name not blank
 * @param date when, if known
 * @param place free text, may be empty
 * @param lineupId the lineup to carry, if chosen
 * @param hours planned hours of painting, 0..24
 * @param sheets planned sheets, 0..1000
 * @param subjects colours of the place
 */
public record Outing(
    String id,
    String name,
    Optional<LocalDate> date,
    String place,
    Optional<String> lineupId,
    double hours,
    int sheets,
    List<SubjectColour> subjects) {
  public Outing {
    subjects = List.copyOf(subjects);
    if (id.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("an outing needs an id and a name");
    }
    if (!(hours >= 0 && hours <= 24)) {
      throw new IllegalArgumentException("hours must lie in 0..24, were " + hours);
    }
    if (sheets < 0 || sheets > 1000) {
      throw new IllegalArgumentException("sheets must lie in 0..1000, were " + sheets);
    }
  }

  /** The outing with other subject colours. */
  public Outing withSubjects(List<SubjectColour> changed) {
    return new Outing(id, name, date, place, lineupId, hours, sheets, changed);
  }

  /** The outing with another lineup, or none. */
  public Outing withLineup(Optional<String> changed) {
    return new Outing(id, name, date, place, changed, hours, sheets, subjects);
  }
}
