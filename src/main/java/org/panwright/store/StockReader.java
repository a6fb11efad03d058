package org.panwright.store;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FilledWell;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.PanKind;
import org.panwright.kit.Remainder;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;
import org.panwright.paint.Shelf;

/** Reads what boxes are filled from and what was filled. */
final class StockReader {
  private static final Address HERE = Address.KIT.child("stock");

  private final Reading reading;
  private final Shelf shelf;
  private final List<Box> boxes;
  private final List<PanKind> pans;

  StockReader(Reading reading, Shelf shelf, List<Box> boxes, List<PanKind> pans) {
    this.reading = reading;
    this.shelf = shelf;
    this.boxes = boxes;
    this.pans = pans;
  }

  /** The stock; its pans are read before the boxes, by {@link PanReader}. */
  Stock stock(Field group) throws BadFieldException {
    if (!group.isPresent()) {
      return Stock.NONE.withPans(pans);
    }
    group.group();
    group.at("pans");
    Stock stock =
        new Stock(
            reading.optional(HERE, group.at("currency"), Field::text, ""),
            tubes(group.at("tubes")),
            filled(group, "filled", f -> mark(f.boxId(), f.wellId())),
            filled(group, "aside", f -> mark(f.boxId(), f.wellId(), f.paintId())),
            pans,
            reading.optional(HERE, group.at("practice"), this::practice, FillPractice.USUAL),
            reading.optional(HERE, group.at("tolerance"), this::tolerance, FitTolerance.USUAL));
    reading.keepRest(HERE, group);
    return stock;
  }

  private List<Tube> tubes(Field list) throws BadFieldException {
    Set<String> taken = new HashSet<>();
    Set<String> everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(HERE, list, entry -> tube(entry.group(), taken, everyId));
  }

  private Tube tube(Field entry, Set<String> taken, Set<String> everyId) throws BadFieldException {
    String id = reading.id(entry.at("id"), taken, everyId, "tube");
    Address here = HERE.entry("tubes", id);
    String paintId = paint(entry.at("paint"));
    double sizeMl = entry.at("sizeMl").positive(1000);
    Tube tube =
        new Tube(
            id,
            paintId,
            sizeMl,
            left(here, entry, sizeMl),
            reading.optional(
                here,
                entry.at("price"),
                f -> OptionalDouble.of(f.number(0, 1e6)),
                OptionalDouble.empty()),
            reading.optional(
                here, entry.at("opened"), f -> Optional.of(f.date()), Optional.empty()),
            reading.optional(here, entry.at("note"), Field::text, ""));
    reading.keepRest(here, entry);
    taken.add(id);
    return tube;
  }

  private Remainder left(Address tube, Field entry, double sizeMl) throws BadFieldException {
    Field weighed = entry.at("weighed");
    Field ml = entry.at("leftMl");
    if (weighed.isPresent()) {
      weighed.group();
      double emptyG = weighed.at("emptyG").number(0, 5000);
      Remainder left =
          new Remainder.ByWeight(
              weighed.at("grossG").number(emptyG, 5000),
              emptyG,
              weighed.at("densityGPerMl").number(0.5, 5));
      requireAtMost(sizeMl, left, weighed);
      reading.keepRest(tube.child("weighed"), weighed);
      return left;
    }
    if (!ml.isPresent()) {
      return new Remainder.ByVolume(sizeMl);
    }
    Remainder left = new Remainder.ByVolume(ml.number(0, 1000));
    requireAtMost(sizeMl, left, ml);
    return left;
  }

  private static void requireAtMost(double sizeMl, Remainder left, Field at)
      throws BadFieldException {
    if (left.ml() > Tube.mostMl(sizeMl, left)) {
      throw at.fault(new FieldFault.MoreThanItsSize(sizeMl, left.ml()));
    }
  }

  /**
   * Filled pans.
   *
   * @param mark what tells them apart
   */
  private List<FilledWell> filled(Field group, String name, Function<FilledWell, String> mark)
      throws BadFieldException {
    Set<String> taken = new HashSet<>();
    return reading.parts(HERE, group.at(name), entry -> filled(entry.group(), name, mark, taken));
  }

  private FilledWell filled(
      Field entry, String name, Function<FilledWell, String> mark, Set<String> taken)
      throws BadFieldException {
    Field boxField = entry.at("box");
    String boxId = boxField.name();
    Field well = entry.at("well");
    String wellId = well.name();
    Box box =
        boxes.stream()
            .filter(b -> b.id().equals(boxId))
            .findFirst()
            .orElseThrow(() -> boxField.fault(new FieldFault.PointsNowhere(boxId)));
    if (box.find(wellId).isEmpty()) {
      throw well.fault(new FieldFault.PointsNowhere(wellId));
    }
    String paintId = paint(entry.at("paint"));
    LocalDate day = entry.at("filledOn").date();
    double filledMl = entry.at("filledMl").positive(100);
    FilledWell full = new FilledWell(boxId, wellId, paintId, day, filledMl, filledMl);
    if (!taken.add(mark.apply(full))) {
      throw well.fault(new FieldFault.SameIdTwice(wellId));
    }
    Address here = HERE.entry(name, mark.apply(full));
    double leftMl =
        reading.optional(here, entry.at("leftMl"), f -> f.number(0, filledMl), filledMl);
    reading.keepRest(here, entry);
    return new FilledWell(boxId, wellId, paintId, day, filledMl, leftMl);
  }

  /** What tells the entries of {@code filled} apart. */
  static String mark(String boxId, String wellId) {
    return boxId + "/" + wellId;
  }

  /** What tells the entries of {@code aside} apart. */
  static String mark(String boxId, String wellId, String paintId) {
    return mark(boxId, wellId) + "/" + paintId;
  }

  private String paint(Field field) throws BadFieldException {
    String id = field.name();
    if (shelf.find(id).isEmpty()) {
      throw field.fault(new FieldFault.PointsNowhere(id));
    }
    return id;
  }

  private FillPractice practice(Field group) throws BadFieldException {
    Address here = HERE.child("practice");
    group.group();
    FillPractice usual = FillPractice.USUAL;
    FillPractice practice =
        new FillPractice(
            number(here, group.at("fullHeight"), 0.05, 1, usual.fullHeight()),
            reading.optional(here, group.at("layers"), f -> f.wholeNumber(1, 12), usual.layers()),
            number(here, group.at("dryingDays"), 0, 60, usual.dryingDays()),
            number(here, group.at("shrinkage"), 0, 0.8, usual.shrinkage()),
            number(here, group.at("dabMl"), 0.01, 5, usual.dabMl()),
            number(here, group.at("refillBelow"), 0, 1, usual.refillBelow()));
    reading.keepRest(here, group);
    return practice;
  }

  private FitTolerance tolerance(Field group) throws BadFieldException {
    Address here = HERE.child("tolerance");
    group.group();
    FitTolerance usual = FitTolerance.USUAL;
    FitTolerance tolerance =
        new FitTolerance(
            number(here, group.at("makeMm"), 0, 5, usual.makeMm()),
            number(here, group.at("looseMm"), 0, 20, usual.looseMm()));
    reading.keepRest(here, group);
    return tolerance;
  }

  private double number(Address here, Field field, double low, double high, double usual) {
    return reading.optional(here, field, f -> f.number(low, high), usual);
  }
}
