package org.panwright.store;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.colour.Lab;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.SheetSize;
import org.panwright.kit.SubjectColour;

/** Reads outings and their subject colours. */
final class OutingReader {
  /** Far outside any colour: keeps typing slips out. */
  private static final double MOST = 1000;

  private final Reading reading;
  private final List<Lineup> lineups;
  private final PackingReader packing;
  private final Set<String> taken = new HashSet<>();
  private Set<String> everyId = new HashSet<>();

  OutingReader(Reading reading, List<Lineup> lineups) {
    this.reading = reading;
    this.lineups = lineups;
    packing = new PackingReader(reading);
  }

  List<Outing> outings(Field list) throws BadFieldException {
    everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(Address.KIT, list, this::outing);
  }

  private Outing outing(Field entry) throws BadFieldException {
    entry.group();
    String id = reading.id(entry.at("id"), taken, everyId, "outing");
    Address here = Address.KIT.entry("outings", id);
    Repeats repeats = new Repeats();
    Outing outing =
        new Outing(
            id,
            reading.required(here, entry.at("name"), Field::name, id),
            reading.optional(here, entry.at("date"), OutingReader::date, Optional.empty()),
            reading.optional(here, entry.at("place"), Field::text, ""),
            reading.optional(here, entry.at("lineup"), this::lineup, Optional.empty()),
            reading.optional(here, entry.at("hours"), f -> f.number(0, 24), 0.0),
            reading.optional(here, entry.at("sheets"), f -> f.wholeNumber(0, 1000), 0),
            reading.parts(
                here, entry.at("subjects"), subject -> subject(here, subject.group(), repeats)),
            reading.optional(
                here, entry.at("sheetSize"), f -> sheetSize(here, f.group()), SheetSize.A5),
            packing.rates(here, entry.at("rates")),
            packing.checklist(here, entry.at("checklist")),
            reading.optional(here, entry.at("paintTaken"), Field::flag, false));
    reading.keepRest(here, entry);
    taken.add(id);
    return outing;
  }

  private SheetSize sheetSize(Address outing, Field group) throws BadFieldException {
    SheetSize size =
        new SheetSize(group.at("widthMm").number(20, 3000), group.at("heightMm").number(20, 3000));
    reading.keepRest(outing.child("sheetSize"), group);
    return size;
  }

  private static Optional<LocalDate> date(Field field) throws BadFieldException {
    String text = field.text();
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      throw field.fault(new FieldFault.NoDate(text));
    }
  }

  private Optional<String> lineup(Field field) throws BadFieldException {
    String id = field.name();
    if (lineups.stream().noneMatch(lineup -> lineup.id().equals(id))) {
      throw field.fault(new FieldFault.PointsNowhere(id));
    }
    return Optional.of(id);
  }

  private SubjectColour subject(Address outing, Field entry, Repeats repeats)
      throws BadFieldException {
    String name = entry.at("name").name();
    Field lab = entry.at("lab").group();
    Lab colour =
        new Lab(
            lab.at("l").number(-MOST, MOST),
            lab.at("a").number(-MOST, MOST),
            lab.at("b").number(-MOST, MOST));
    Address here = outing.entry("subjects", repeats.mark(name));
    SubjectColour subject =
        new SubjectColour(
            name,
            colour,
            reading.optional(here, entry.at("share"), f -> f.number(0, 1), 0.0),
            reading.optional(here, entry.at("photo"), Field::text, ""));
    reading.keepRest(here, entry);
    reading.keepRest(here.child("lab"), lab);
    return subject;
  }
}
