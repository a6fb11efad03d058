package org.panwright.kit;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

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
 * @param sheetSize size of the sheets
 * @param rates how much of everything the painter gets through on it
 * @param checklist what to take, in the painter's order, no two entries with the same id; empty as
 *     long as the painter left the usual list as it is
 * @param paintTaken whether what it used was taken out of the wells
 */
public record Outing(
    String id,
    String name,
    Optional<LocalDate> date,
    String place,
    Optional<String> lineupId,
    double hours,
    int sheets,
    List<SubjectColour> subjects,
    SheetSize sheetSize,
    PackingRates rates,
    Optional<List<CheckItem>> checklist,
    boolean paintTaken) {
  public Outing {
    subjects = List.copyOf(subjects);
    checklist = checklist.map(List::copyOf);
    Objects.requireNonNull(sheetSize, "sheetSize");
    Objects.requireNonNull(rates, "rates");
    if (id.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("an outing needs an id and a name");
    }
    if (!(hours >= 0 && hours <= 24)) {
      throw new IllegalArgumentException("hours must lie in 0..24, were " + hours);
    }
    if (sheets < 0 || sheets > 1000) {
      throw new IllegalArgumentException("sheets must lie in 0..1000, were " + sheets);
    }
    Set<String> seen = new HashSet<>();
    for (CheckItem item : checklist.orElse(List.of())) {
      if (!seen.add(item.id())) {
        throw new IllegalArgumentException("two check list entries have the id " + item.id());
      }
    }
  }

  /** An outing with sheets of A5, the usual rates and the usual check list. */
  public Outing(
      String id,
      String name,
      Optional<LocalDate> date,
      String place,
      Optional<String> lineupId,
      double hours,
      int sheets,
      List<SubjectColour> subjects) {
    this(
        id,
        name,
        date,
        place,
        lineupId,
        hours,
        sheets,
        subjects,
        SheetSize.A5,
        PackingRates.USUAL,
        Optional.empty(),
        false);
  }

  /** The outing under another name. */
  public Outing withName(String changed) {
    return new Outing(
        id,
        changed,
        date,
        place,
        lineupId,
        hours,
        sheets,
        subjects,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing on another day, or on none yet. */
  public Outing withDate(Optional<LocalDate> changed) {
    return new Outing(
        id,
        name,
        changed,
        place,
        lineupId,
        hours,
        sheets,
        subjects,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing to another place. */
  public Outing withPlace(String changed) {
    return new Outing(
        id,
        name,
        date,
        changed,
        lineupId,
        hours,
        sheets,
        subjects,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing with another lineup, or none. */
  public Outing withLineup(Optional<String> changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        changed,
        hours,
        sheets,
        subjects,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing of another length. */
  public Outing withHours(double changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        lineupId,
        changed,
        sheets,
        subjects,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing with more or fewer sheets. */
  public Outing withSheets(int changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        lineupId,
        hours,
        changed,
        subjects,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing with other subject colours. */
  public Outing withSubjects(List<SubjectColour> changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        lineupId,
        hours,
        sheets,
        changed,
        sheetSize,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing with sheets of another size. */
  public Outing withSheetSize(SheetSize changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        lineupId,
        hours,
        sheets,
        subjects,
        changed,
        rates,
        checklist,
        paintTaken);
  }

  /** The outing at other rates. */
  public Outing withRates(PackingRates changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        lineupId,
        hours,
        sheets,
        subjects,
        sheetSize,
        changed,
        checklist,
        paintTaken);
  }

  /** The outing with another check list, or with the usual one. */
  public Outing withChecklist(Optional<List<CheckItem>> changed) {
    return new Outing(
        id,
        name,
        date,
        place,
        lineupId,
        hours,
        sheets,
        subjects,
        sheetSize,
        rates,
        changed,
        paintTaken);
  }

  /** The outing with its paint taken out of the wells. */
  Outing withPaintTaken() {
    return new Outing(
        id, name, date, place, lineupId, hours, sheets, subjects, sheetSize, rates, checklist,
        true);
  }
}
