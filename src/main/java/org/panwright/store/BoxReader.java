package org.panwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.PanKind;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;

/** Reads boxes and their wells. */
final class BoxReader {
  private final Reading reading;
  private final Address owner;
  private final List<PanKind> pans;
  private final Set<String> taken = new HashSet<>();
  private Set<String> everyId = new HashSet<>();

  /**
   * @param owner the group the list of boxes stands in
   * @param pans the kinds a well may name
   */
  BoxReader(Reading reading, Address owner, List<PanKind> pans) {
    this.reading = reading;
    this.owner = owner;
    this.pans = List.copyOf(pans);
  }

  List<Box> boxes(Field list) throws BadFieldException {
    everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(owner, list, this::box);
  }

  private Box box(Field entry) throws BadFieldException {
    entry.group();
    String id = reading.id(entry.at("id"), taken, everyId, "box");
    Address here = owner.entry("boxes", id);
    double width = entry.at("widthMm").number(10, 1000);
    double height = entry.at("heightMm").number(10, 1000);
    String name = reading.required(here, entry.at("name"), Field::name, id);
    double lidWidth =
        reading.optional(here, entry.at("lidWidthMm"), f -> f.number(10, 1000), width);
    double lidHeight =
        reading.optional(here, entry.at("lidHeightMm"), f -> f.number(10, 1000), height);
    Box plain =
        new Box(
            id,
            name,
            width,
            height,
            lidWidth,
            lidHeight,
            wells(here, entry.at("wells"), width, height),
            reading.optional(
                here,
                entry.at("depthMm"),
                f -> OptionalDouble.of(f.number(2, 100)),
                OptionalDouble.empty()),
            List.of());
    Box box =
        plain.withFixtures(new FixtureReader(reading, plain).fixtures(here, entry.at("parts")));
    reading.keepRest(here, entry);
    taken.add(id);
    return box;
  }

  private List<Well> wells(Address box, Field list, double width, double height)
      throws BadFieldException {
    Set<String> everyWell = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    List<Well> sofar = new ArrayList<>();
    List<Well> wells =
        reading.parts(
            box,
            list,
            entry -> {
              Well well = well(box, entry.group(), sofar, everyWell);
              if (!well.liesWithin(width, height)) {
                throw entry.fault(new FieldFault.OutsideBox());
              }
              for (Well other : sofar) {
                if (well.overlaps(other)) {
                  throw entry.fault(new FieldFault.OnAnotherWell(other.label()));
                }
              }
              sofar.add(well);
              return well;
            });
    if (wells.isEmpty()) {
      throw list.fault(new FieldFault.NothingInList());
    }
    return wells;
  }

  private Well well(Address box, Field entry, List<Well> sofar, Set<String> everyWell)
      throws BadFieldException {
    Set<String> takenHere = new HashSet<>(sofar.stream().map(Well::id).toList());
    String id = reading.id(entry.at("id"), takenHere, everyWell, "well");
    Address here = box.entry("wells", id);
    Well well =
        new Well(
            id,
            reading.optional(here, entry.at("label"), Field::name, id),
            reading.required(
                here, entry.at("kind"), f -> f.word(WellKind.class), WellKind.HALF_PAN),
            entry.at("xMm").number(0, 1000),
            entry.at("yMm").number(0, 1000),
            entry.at("widthMm").number(2, 200),
            entry.at("heightMm").number(2, 200),
            reading.optional(here, entry.at("pan"), this::pan, Optional.empty()));
    reading.keepRest(here, entry);
    return well;
  }

  private Optional<String> pan(Field field) throws BadFieldException {
    String id = field.name();
    if (pans.stream().noneMatch(pan -> pan.id().equals(id))) {
      throw field.fault(new FieldFault.PointsNowhere(id));
    }
    return Optional.of(id);
  }
}
