package org.panwright.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.PaintRules;
import org.panwright.kit.PaintWish;
import org.panwright.kit.Weights;
import org.panwright.paint.Lightfastness;

/** Reads what is asked of lineups proposed in place of one. */
final class WishesReader {
  private final Reading reading;
  private final Address here;

  /**
   * @param here where the group stands
   */
  WishesReader(Reading reading, Address here) {
    this.reading = reading;
    this.here = here;
  }

  LineupWishes wishes(Field group) throws BadFieldException {
    group.group();
    int wells = group.at("wells").wholeNumber(0, LineupWishes.MOST);
    int dabs =
        reading.optional(
            here, group.at("dabs"), f -> f.wholeNumber(0, LineupWishes.MOST - wells), 0);
    Map<String, PaintWish> paints = new LinkedHashMap<>();
    reading.parts(here, group.at("paints"), entry -> paint(entry.group(), paints));
    LineupWishes wishes =
        new LineupWishes(
            wells,
            dabs,
            paints,
            rules(group),
            reading.optional(
                here,
                group.at("mostOfAGroup"),
                f -> Optional.of(f.wholeNumber(1, LineupWishes.MOST)),
                Optional.empty()),
            reading.optional(here, group.at("weights"), this::weights, Weights.USUAL),
            reading.optional(
                here, group.at("outing"), f -> Optional.of(f.name()), Optional.empty()));
    reading.keepRest(here, group);
    return wishes;
  }

  private PaintWish paint(Field entry, Map<String, PaintWish> paints) throws BadFieldException {
    Field paint = entry.at("paint");
    String id = paint.name();
    if (paints.containsKey(id)) {
      throw paint.fault(new FieldFault.SameIdTwice(id));
    }
    PaintWish wish = entry.at("wish").word(PaintWish.class);
    reading.keepRest(here.entry("paints", id), entry);
    paints.put(id, wish);
    return wish;
  }

  private PaintRules rules(Field group) {
    PaintRules usual = PaintRules.AT_HAND;
    Optional<Lightfastness> any = Optional.empty();
    return new PaintRules(
        flag(group.at("ownedOnly"), usual.ownedOnly()),
        flag(group.at("singlePigment"), usual.singlePigment()),
        flag(group.at("noCadmium"), usual.noCadmium()),
        reading.optional(
            here, group.at("lightfastness"), f -> Optional.of(f.word(Lightfastness.class)), any));
  }

  private boolean flag(Field field, boolean usual) {
    return reading.optional(here, field, Field::flag, usual);
  }

  private Weights weights(Field group) throws BadFieldException {
    group.group();
    List<String> names = WishesWriter.WEIGHTS;
    double[] weights = new double[names.size()];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = group.at(names.get(i)).number(0, Weights.MOST);
    }
    reading.keepRest(here.child("weights"), group);
    return new Weights(weights[0], weights[1], weights[2], weights[3], weights[4]);
  }
}
