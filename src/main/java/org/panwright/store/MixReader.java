package org.panwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.KeptMix;
import org.panwright.paint.Wash;

/** Reads the mixes on the key card of one lineup; a mix of which anything is wrong is left out. */
final class MixReader {
  private static final double MOST_PARTS = 100;

  private final Reading reading;
  private final Address lineup;
  private final Set<String> keys = new HashSet<>();

  MixReader(Reading reading, Address lineup) {
    this.reading = reading;
    this.lineup = lineup;
  }

  List<KeptMix> mixes(Field list) throws BadFieldException {
    return reading.parts(lineup, list, this::mix);
  }

  private KeptMix mix(Field entry) throws BadFieldException {
    Field list = entry.group().at("parts");
    List<Field> fields = list.list();
    if (fields.isEmpty()) {
      throw list.fault(new FieldFault.NothingInList());
    }
    Set<String> paints = new HashSet<>();
    List<KeptMix.Part> parts = new ArrayList<>();
    for (Field field : fields) {
      Field paint = field.group().at("paint");
      if (!paints.add(paint.name())) {
        throw paint.fault(new FieldFault.SameIdTwice(paint.name()));
      }
      parts.add(new KeptMix.Part(paint.name(), field.at("parts").positive(MOST_PARTS)));
    }
    Wash wash = entry.at("wash").word(Wash.class);
    String name = entry.at("name").isPresent() ? entry.at("name").text() : "";
    KeptMix mix = new KeptMix(parts, wash, name);
    if (!keys.add(mix.key())) {
      throw list.fault(new FieldFault.SameIdTwice(mix.key()));
    }
    Address here = lineup.entry("cardMixes", mix.key());
    for (int i = 0; i < fields.size(); i++) {
      reading.keepRest(here.entry("parts", parts.get(i).paintId()), fields.get(i));
    }
    reading.keepRest(here, entry);
    return mix;
  }
}
