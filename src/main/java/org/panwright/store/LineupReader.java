package org.panwright.store;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.KeptMix;
import org.panwright.kit.Lineup;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.MutedFinding;
import org.panwright.paint.Shelf;

/** Reads lineups: which paint of the shelf sits in which well of a box. */
final class LineupReader {
  private final Reading reading;
  private final Shelf shelf;
  private final List<Box> boxes;
  private final Set<String> taken = new HashSet<>();
  private Set<String> everyId = new HashSet<>();

  LineupReader(Reading reading, Shelf shelf, List<Box> boxes) {
    this.reading = reading;
    this.shelf = shelf;
    this.boxes = boxes;
  }

  List<Lineup> lineups(Field list) throws BadFieldException {
    everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(Address.KIT, list, this::lineup);
  }

  private Lineup lineup(Field entry) throws BadFieldException {
    entry.group();
    String id = reading.id(entry.at("id"), taken, everyId, "lineup");
    Address here = Address.KIT.entry("lineups", id);
    String name = reading.required(here, entry.at("name"), Field::name, id);
    Box box = box(entry.at("box"));
    Map<String, Filling> fillings = new LinkedHashMap<>();
    reading.parts(
        here, entry.at("fillings"), filling -> fill(here, filling.group(), box, fillings));
    List<MutedFinding> muted = muted(here, entry.at("muted"));
    Field mixes = entry.at("cardMixes");
    Optional<List<KeptMix>> cardMixes =
        mixes.isPresent()
            ? Optional.of(new MixReader(reading, here).mixes(mixes))
            : Optional.empty();
    Optional<LineupWishes> wishes =
        reading.optional(
            here,
            entry.at("wishes"),
            f -> Optional.of(new WishesReader(reading, here.child("wishes")).wishes(f)),
            Optional.empty());
    reading.keepRest(here, entry);
    taken.add(id);
    return new Lineup(id, name, box.id(), fillings, muted, cardMixes, wishes);
  }

  private List<MutedFinding> muted(Address lineup, Field list) throws BadFieldException {
    Set<String> keys = new HashSet<>();
    return reading.parts(
        lineup,
        list,
        entry -> {
          Field finding = entry.group().at("finding");
          String key = finding.name();
          if (!keys.add(key)) {
            throw finding.fault(new FieldFault.SameIdTwice(key));
          }
          Address here = lineup.entry("muted", key);
          String reason = reading.optional(here, entry.at("reason"), Field::text, "");
          reading.keepRest(here, entry);
          return new MutedFinding(key, reason);
        });
  }

  private Box box(Field field) throws BadFieldException {
    String id = field.name();
    return boxes.stream()
        .filter(box -> box.id().equals(id))
        .findFirst()
        .orElseThrow(() -> field.fault(new FieldFault.PointsNowhere(id)));
  }

  /** Adds one entry to {@code fillings}. */
  private Filling fill(Address lineup, Field entry, Box box, Map<String, Filling> fillings)
      throws BadFieldException {
    Field well = entry.at("well");
    String wellId = well.name();
    if (box.find(wellId).isEmpty()) {
      throw well.fault(new FieldFault.PointsNowhere(wellId));
    }
    if (fillings.containsKey(wellId)) {
      throw well.fault(new FieldFault.SameIdTwice(wellId));
    }
    Field paint = entry.at("paint");
    String paintId = paint.name();
    if (shelf.find(paintId).isEmpty()) {
      throw paint.fault(new FieldFault.PointsNowhere(paintId)).givingWayTo(wellId);
    }
    Address here = lineup.entry("fillings", wellId);
    Filling filling =
        new Filling(
            paintId, reading.optional(here, entry.at("fill"), f -> f.word(Fill.class), Fill.FULL));
    reading.keepRest(here, entry);
    fillings.put(wellId, filling);
    return filling;
  }
}
