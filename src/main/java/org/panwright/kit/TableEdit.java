package org.panwright.kit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;

/**
 * Takes a table of paints into the kit, all at once.
 *
 * @param added new paints, put at the end of the shelf
 * @param changed paints of the shelf as they are to be
 * @param lineup a lineup of the kit as it is to be, if the table fills one
 */
public record TableEdit(List<Paint> added, List<Paint> changed, Optional<Lineup> lineup)
    implements Edit {
  public TableEdit {
    added = List.copyOf(added);
    changed = List.copyOf(changed);
  }

  @Override
  public Kit apply(Kit kit) {
    Map<String, Paint> newer = new HashMap<>();
    for (Paint paint : changed) {
      if (kit.shelf().find(paint.id()).isEmpty()) {
        throw new IllegalArgumentException("the kit has no paint " + paint.id());
      }
      newer.put(paint.id(), paint);
    }
    List<Paint> paints = new ArrayList<>();
    kit.shelf().paints().forEach(paint -> paints.add(newer.getOrDefault(paint.id(), paint)));
    paints.addAll(added);
    Kit filled = kit.withShelf(new Shelf(paints));
    if (lineup.isEmpty()) {
      return filled;
    }
    if (kit.lineup(lineup.get().id()).isEmpty()) {
      throw new IllegalArgumentException("the kit has no lineup " + lineup.get().id());
    }
    return filled.replacing(lineup.get());
  }
}
