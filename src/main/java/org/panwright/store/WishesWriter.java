package org.panwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.panwright.kit.Aim;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.PaintWish;
import org.panwright.kit.Weights;

/** Writes what is asked of lineups proposed in place of one. */
final class WishesWriter {
  /** The weights' fields in the order of {@link Aim}. */
  static final List<String> WEIGHTS = List.of("ring", "reach", "subjects", "darks", "transparency");

  private final KitWriter kit;

  WishesWriter(KitWriter kit) {
    this.kit = kit;
  }

  ObjectNode wishes(Address here, LineupWishes wishes) {
    ObjectNode node = KitWriter.group();
    node.put("wells", wishes.wells());
    node.put("dabs", wishes.dabs());
    node.put("ownedOnly", wishes.rules().ownedOnly());
    node.put("singlePigment", wishes.rules().singlePigment());
    node.put("noCadmium", wishes.rules().noCadmium());
    wishes
        .rules()
        .lightfastness()
        .ifPresent(worst -> node.put("lightfastness", Spelling.of(worst)));
    wishes.mostOfAGroup().ifPresent(most -> node.put("mostOfAGroup", most));
    node.set("weights", weights(here.child("weights"), wishes.weights()));
    wishes.outingId().ifPresent(id -> node.put("outing", id));
    KitWriter.putList(
        node,
        "paints",
        kit.list(
            here,
            "paints",
            List.copyOf(wishes.paints().entrySet()),
            Map.Entry::getKey,
            this::paint));
    return kit.finish(here, node);
  }

  private ObjectNode weights(Address here, Weights weights) {
    ObjectNode node = KitWriter.group();
    for (Aim aim : Aim.values()) {
      node.put(WEIGHTS.get(aim.ordinal()), weights.of(aim));
    }
    return kit.finish(here, node);
  }

  private ObjectNode paint(Address here, Map.Entry<String, PaintWish> entry) {
    ObjectNode node = KitWriter.group();
    node.put("paint", entry.getKey());
    node.put("wish", Spelling.of(entry.getValue()));
    return kit.finish(here, node);
  }
}
