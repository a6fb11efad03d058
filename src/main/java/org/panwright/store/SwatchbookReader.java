package org.panwright.store;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.panwright.colour.Bands;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.FormerOptics;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Swatchbook;

/** Reads the coats kept with a paint and the history of its optics. */
final class SwatchbookReader {
  private static final double FARTHEST_OPPONENT = 200;

  private final Reading reading;
  private final Address paint;
  private final Set<String> taken = new HashSet<>();
  private Set<String> everyId = new HashSet<>();

  /** Reads the optics of a group, kept under an address. */
  interface OpticsReader {
    Optional<Optics> read(Address here, Field group) throws BadFieldException;
  }

  SwatchbookReader(Reading reading, Address paint) {
    this.reading = reading;
    this.paint = paint;
  }

  Swatchbook book(Field entry, OpticsReader optics) {
    return new Swatchbook(
        reading.optional(paint, entry.at("swatches"), this::coats, List.of()),
        reading.optional(
            paint,
            entry.at("opticsFrom"),
            f -> Optional.of(origin(paint.child("opticsFrom"), f)),
            Optional.empty()),
        reading.optional(paint, entry.at("formerOptics"), f -> former(f, optics), List.of()));
  }

  private List<PaintedCoat> coats(Field list) throws BadFieldException {
    everyId = Reading.ids(list.list());
    return reading.parts(paint, list, this::coat);
  }

  private PaintedCoat coat(Field entry) throws BadFieldException {
    entry.group();
    String id = reading.id(entry.at("id"), taken, everyId, "swatch");
    Address here = paint.entry("swatches", id);
    PaintedCoat coat =
        new PaintedCoat(
            id,
            coatReading(here.child("dry"), entry.at("dry")),
            someReading(here, entry.at("wet")),
            reading.optional(
                here,
                entry.at("load"),
                f -> OptionalDouble.of(f.positive(PaintedCoat.MOST_LOAD)),
                OptionalDouble.empty()),
            reading.optional(
                here,
                entry.at("strength"),
                f -> f.word(PaintedCoat.Strength.class),
                PaintedCoat.Strength.UNKNOWN),
            entry.at("over").isPresent()
                ? entry.at("over").word(PaintedCoat.Ground.class)
                : PaintedCoat.Ground.PAPER,
            someReading(here, entry.at("ground")),
            entry.at("mixedWith").isPresent()
                ? Optional.of(admixture(here.child("mixedWith"), entry.at("mixedWith")))
                : Optional.empty(),
            reading.optional(here, entry.at("date"), SwatchbookReader::date, Optional.empty()),
            reading.optional(here, entry.at("source"), Field::text, ""),
            reading.optional(here, entry.at("note"), Field::text, ""));
    reading.keepRest(here, entry);
    taken.add(id);
    return coat;
  }

  private Optional<CoatReading> someReading(Address coat, Field field) {
    return reading.optional(
        coat, field, f -> Optional.of(coatReading(coat.child(field.key()), f)), Optional.empty());
  }

  private CoatReading coatReading(Address here, Field group) throws BadFieldException {
    group.group();
    Field reflectance = group.at("reflectance");
    Field lab = group.at("lab");
    CoatReading read;
    if (reflectance.isPresent()) {
      read = new CoatReading.OfSpectrum(Spectrum.of(reflectance.numbers(Bands.COUNT, 0, 1)));
    } else {
      lab.group();
      read =
          new CoatReading.OfColour(
              new Lab(
                  lab.at("l").number(Math.nextUp(0), Math.nextDown(100)),
                  lab.at("a").number(-FARTHEST_OPPONENT, FARTHEST_OPPONENT),
                  lab.at("b").number(-FARTHEST_OPPONENT, FARTHEST_OPPONENT)));
      reading.keepRest(here.child("lab"), lab);
    }
    reading.keepRest(here, group);
    return read;
  }

  private Admixture admixture(Address here, Field group) throws BadFieldException {
    group.group();
    Admixture.Kind kind = group.at("kind").word(Admixture.Kind.class);
    String id = kind == Admixture.Kind.PAINT ? group.at("paint").name() : "";
    Admixture admixture =
        new Admixture(kind, id, group.at("share").number(Math.nextUp(0), Math.nextDown(1)));
    reading.keepRest(here, group);
    return admixture;
  }

  private List<FormerOptics> former(Field list, OpticsReader optics) throws BadFieldException {
    Repeats repeats = new Repeats();
    return reading.parts(paint, list, entry -> former(entry, optics, repeats));
  }

  private FormerOptics former(Field entry, OpticsReader optics, Repeats repeats)
      throws BadFieldException {
    Field from = entry.group().at("from");
    Field of = entry.at("optics");
    OpticsOrigin origin = origin(from);
    Address here = paint.entry("formerOptics", repeats.mark(mark(origin)));
    reading.keepRest(here.child("from"), from);
    FormerOptics former =
        new FormerOptics(
            of.isPresent() ? optics.read(here.child("optics"), of) : Optional.empty(), origin);
    reading.keepRest(here, entry);
    return former;
  }

  /** What tells lines of the history apart, as there are no ids. */
  static String mark(OpticsOrigin origin) {
    return origin.date().map(LocalDate::toString).orElse("") + " " + origin.reason();
  }

  private OpticsOrigin origin(Address here, Field group) throws BadFieldException {
    OpticsOrigin origin = origin(group);
    reading.keepRest(here, group);
    return origin;
  }

  private static OpticsOrigin origin(Field group) throws BadFieldException {
    group.group();
    Field date = group.at("date");
    Field detail = group.at("detail");
    return new OpticsOrigin(
        date.isPresent() ? date(date) : Optional.empty(),
        group.at("reason").word(OpticsOrigin.Reason.class),
        detail.isPresent() ? detail.text() : "");
  }

  private static Optional<LocalDate> date(Field field) throws BadFieldException {
    String text = field.text();
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      throw field.fault(new FieldFault.NoDate(text));
    }
  }
}
