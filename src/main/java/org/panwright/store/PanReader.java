package org.panwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.PanKind;

/** Reads the kinds of pans. */
final class PanReader {
  private final Reading reading;
  private final Address owner;

  /**
   * @param owner the group the list stands in
   */
  PanReader(Reading reading, Address owner) {
    this.reading = reading;
    this.owner = owner;
  }

  /** The kinds in a list; the usual ones if there is none, and those that must be there. */
  List<PanKind> pans(Field list) throws BadFieldException {
    if (!list.isPresent()) {
      return PanKind.USUAL;
    }
    Set<String> taken = new HashSet<>();
    Set<String> everyId = Reading.ids(list.list());
    List<PanKind> pans =
        new ArrayList<>(reading.parts(owner, list, entry -> pan(entry.group(), taken, everyId)));
    for (PanKind usual : PanKind.USUAL) {
      boolean needed = usual.id().equals(PanKind.FULL_ID) || usual.id().equals(PanKind.HALF_ID);
      if (needed && pans.stream().noneMatch(pan -> pan.id().equals(usual.id()))) {
        pans.add(usual);
      }
    }
    return pans;
  }

  private PanKind pan(Field entry, Set<String> taken, Set<String> everyId)
      throws BadFieldException {
    String id = reading.id(entry.at("id"), taken, everyId, "pan");
    Address here = owner.entry("pans", id);
    String name = reading.required(here, entry.at("name"), Field::name, id);
    PanKind.Extent outer = extent(here.child("outer"), entry.at("outer").group());
    Field innerField = entry.at("inner").group();
    PanKind.Extent inner = extent(here.child("inner"), innerField);
    double mostTaper = Math.min(10, inner.widthMm() - 0.01);
    double taper = reading.optional(here, entry.at("taperMm"), f -> f.number(0, mostTaper), 0.0);
    double brim = entry.at("brimMl").positive(50);
    try {
      PanKind pan = new PanKind(id, name, outer, inner, taper, brim);
      reading.keepRest(here, entry);
      taken.add(id);
      return pan;
    } catch (IllegalArgumentException e) {
      throw innerField.fault(new FieldFault.BreaksRule(e.getMessage()));
    }
  }

  private PanKind.Extent extent(Address here, Field group) throws BadFieldException {
    double length = group.at("lengthMm").number(2, 200);
    PanKind.Extent extent =
        new PanKind.Extent(
            length, group.at("widthMm").number(2, length), group.at("heightMm").number(1, 100));
    reading.keepRest(here, group);
    return extent;
  }
}
