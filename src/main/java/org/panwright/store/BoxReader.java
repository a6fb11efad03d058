package org.panwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;

/** Reads boxes and their wells. */
final class BoxReader {
  private final Reading reading;
  private final Set<String> taken = new HashSet<>();
  private Set<String> everyId = new HashSet<>();

  BoxReader(Reading reading) {
    this.reading = reading;
  }

  List<Box> boxes(Field list) throws BadFieldException {
    everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(Address.KIT, list, this::box);
  }

  private Box box(Field entry) throws BadFieldException {
    entry.group();
    String id = reading.id(entry.at("id"), taken, everyId, "box");
    Address here = Address.KIT.entry("boxes", id);
    double width = entry.at("widthMm").number(10, 1000);
    double height = entry.at("heightMm").number(10, 1000);
    Box box =
        new Box(
            id,
            reading.required(here, entry.at("name"), Field::name, id),
            width,
            height,
            reading.optional(here, entry.at("lidWidthMm"), f -> f.number(10, 1000), width),
            reading.optional(here, entry.at("lidHeightMm"), f -> f.number(10, 1000), height),
            wells(here, entry.at("wells"), width, height));
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
            entry.at("heightMm").number(2, 200));
    reading.keepRest(here, entry);
    return well;
  }
}
