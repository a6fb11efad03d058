package org.panwright.store;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.CheckItem;
import org.panwright.kit.PackingRate;
import org.panwright.kit.PackingRates;
import org.panwright.kit.Supply;

/** Reads the rates and the check list of an outing. */
final class PackingReader {
  private static final PackingRates USUAL = PackingRates.USUAL;

  private final Reading reading;

  PackingReader(Reading reading) {
    this.reading = reading;
  }

  /** Each rate apart: one that cannot be used must not cost the painter the others. */
  PackingRates rates(Address outing, Field field) {
    return reading.optional(outing, field, group -> rates(outing, field, group.group()), USUAL);
  }

  private PackingRates rates(Address outing, Field field, Field group) {
    Address here = outing.child(field.key());
    PackingRates rates =
        new PackingRates(
            rate(here, group.at("paintMlPerA5"), PackingRate.PAINT_FOR_A5, USUAL.paintMlPerA5()),
            rate(
                here,
                group.at("waterMlPerHour"),
                PackingRate.WATER_FOR_HOUR,
                USUAL.waterMlPerHour()),
            rate(here, group.at("waterMlPerA5"), PackingRate.WATER_FOR_A5, USUAL.waterMlPerA5()),
            reading.optional(
                here,
                group.at("cups"),
                f -> f.wholeNumber(PackingRate.CUPS.least(), PackingRate.CUPS.most()),
                USUAL.cups()),
            rate(here, group.at("cupMl"), PackingRate.CUP, USUAL.cupMl()),
            rate(here, group.at("spareSheets"), PackingRate.SPARE_SHEETS, USUAL.spareSheets()),
            rate(
                here,
                group.at("wipesPerSheet"),
                PackingRate.WIPES_FOR_SHEET,
                USUAL.wipesPerSheet()));
    reading.keepRest(here, group);
    return rates;
  }

  private double rate(Address here, Field field, PackingRate rate, double usual) {
    return reading.optional(here, field, f -> f.number(rate.least(), rate.most()), usual);
  }

  /** The check list; empty where the file has none. */
  Optional<List<CheckItem>> checklist(Address outing, Field list) throws BadFieldException {
    if (!list.isPresent()) {
      return Optional.empty();
    }
    Set<String> taken = new HashSet<>();
    Set<String> everyId = Reading.ids(list.list());
    return Optional.of(
        reading.parts(outing, list, entry -> item(outing, entry.group(), taken, everyId)));
  }

  private CheckItem item(Address outing, Field entry, Set<String> taken, Set<String> everyId)
      throws BadFieldException {
    String text = entry.at("text").name();
    String id = reading.id(entry.at("id"), taken, everyId, "item");
    Address here = outing.entry("checklist", id);
    CheckItem item =
        new CheckItem(
            id,
            text,
            reading.optional(here, entry.at("note"), Field::text, ""),
            reading.optional(here, entry.at("ticked"), Field::flag, false),
            reading.optional(
                here,
                entry.at("supply"),
                f -> Optional.of(f.word(Supply.class)),
                Optional.<Supply>empty()));
    reading.keepRest(here, entry);
    taken.add(id);
    return item;
  }
}
