package org.panwright.store;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.Well;

/** Reads the parts of a box that are no wells. */
final class FixtureReader {
  private final Reading reading;
  private final Box box;

  /**
   * @param box as read so far, with its wells
   */
  FixtureReader(Reading reading, Box box) {
    this.reading = reading;
    this.box = box;
  }

  List<Fixture> fixtures(Address here, Field list) throws BadFieldException {
    Set<String> taken = new HashSet<>();
    Set<String> everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(here, list, entry -> fixture(here, entry.group(), taken, everyId));
  }

  private Fixture fixture(Address owner, Field entry, Set<String> taken, Set<String> everyId)
      throws BadFieldException {
    String id = reading.id(entry.at("id"), taken, everyId, "part");
    Address here = owner.entry("parts", id);
    Fixture fixture =
        new Fixture(
            id,
            entry.at("kind").word(FixtureKind.class),
            reading.optional(here, entry.at("inLid"), Field::flag, false),
            entry.at("xMm").number(0, 1000),
            entry.at("yMm").number(0, 1000),
            entry.at("widthMm").number(1, 1000),
            entry.at("heightMm").number(1, 1000),
            reading.optional(here, entry.at("thicknessMm"), f -> f.number(0, 20), 0.0));
    if (!fixture.liesWithin(
        fixture.inLid() ? box.lidWidthMm() : box.widthMm(),
        fixture.inLid() ? box.lidHeightMm() : box.heightMm())) {
      throw entry.fault(new FieldFault.OutsideBox());
    }
    Optional<Well> barred = box.wells().stream().filter(fixture::bars).findFirst();
    if (barred.isPresent()) {
      throw entry.fault(new FieldFault.UnderWell(barred.get().label()));
    }
    reading.keepRest(here, entry);
    taken.add(id);
    return fixture;
  }
}
