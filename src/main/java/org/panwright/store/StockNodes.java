package org.panwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FilledWell;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.PanKind;
import org.panwright.kit.Remainder;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;

/** Turns what boxes are filled from into its part of the kit's tree. */
final class StockNodes {
  private static final Address HERE = Address.KIT.child("stock");

  private final KitWriter writer;

  StockNodes(KitWriter writer) {
    this.writer = writer;
  }

  ObjectNode stock(Stock stock) {
    ObjectNode node = KitWriter.group();
    KitWriter.putText(node, "currency", stock.currency());
    node.set("tubes", writer.list(HERE, "tubes", stock.tubes(), Tube::id, this::tube));
    node.set(
        "filled",
        writer.list(
            HERE,
            "filled",
            stock.filled(),
            f -> StockReader.mark(f.boxId(), f.wellId()),
            this::filled));
    KitWriter.putList(
        node,
        "aside",
        writer.list(
            HERE,
            "aside",
            stock.aside(),
            f -> StockReader.mark(f.boxId(), f.wellId(), f.paintId()),
            this::filled));
    node.set("pans", writer.list(HERE, "pans", stock.pans(), PanKind::id, this::pan));
    node.set("practice", practice(stock.practice()));
    node.set("tolerance", tolerance(stock.tolerance()));
    return writer.finish(HERE, node);
  }

  private ObjectNode tube(Address here, Tube tube) {
    ObjectNode node = KitWriter.group();
    node.put("id", tube.id());
    node.put("paint", tube.paintId());
    node.put("sizeMl", tube.sizeMl());
    if (tube.left() instanceof Remainder.ByWeight weight) {
      ObjectNode weighed = KitWriter.group();
      weighed.put("grossG", weight.grossG());
      weighed.put("emptyG", weight.emptyG());
      weighed.put("densityGPerMl", weight.densityGPerMl());
      node.set("weighed", writer.finish(here.child("weighed"), weighed));
    } else {
      node.put("leftMl", tube.leftMl());
    }
    tube.price().ifPresent(price -> node.put("price", price));
    tube.opened().ifPresent(date -> node.put("opened", date.toString()));
    KitWriter.putText(node, "note", tube.note());
    return writer.finish(here, node);
  }

  private ObjectNode filled(Address here, FilledWell filled) {
    ObjectNode node = KitWriter.group();
    node.put("box", filled.boxId());
    node.put("well", filled.wellId());
    node.put("paint", filled.paintId());
    node.put("filledOn", filled.filledOn().toString());
    node.put("filledMl", filled.filledMl());
    node.put("leftMl", filled.leftMl());
    return writer.finish(here, node);
  }

  /** A kind of pan; also a part of a box's own file. */
  ObjectNode pan(Address here, PanKind pan) {
    ObjectNode node = KitWriter.group();
    node.put("id", pan.id());
    node.put("name", pan.name());
    node.set("outer", extent(here.child("outer"), pan.outer()));
    node.set("inner", extent(here.child("inner"), pan.inner()));
    node.put("taperMm", pan.taperMm());
    node.put("brimMl", pan.brimMl());
    return writer.finish(here, node);
  }

  private ObjectNode extent(Address here, PanKind.Extent extent) {
    ObjectNode node = KitWriter.group();
    node.put("lengthMm", extent.lengthMm());
    node.put("widthMm", extent.widthMm());
    node.put("heightMm", extent.heightMm());
    return writer.finish(here, node);
  }

  private ObjectNode practice(FillPractice practice) {
    ObjectNode node = KitWriter.group();
    node.put("fullHeight", practice.fullHeight());
    node.put("layers", practice.layers());
    node.put("dryingDays", practice.dryingDays());
    node.put("shrinkage", practice.shrinkage());
    node.put("dabMl", practice.dabMl());
    node.put("refillBelow", practice.refillBelow());
    return writer.finish(HERE.child("practice"), node);
  }

  private ObjectNode tolerance(FitTolerance tolerance) {
    ObjectNode node = KitWriter.group();
    node.put("makeMm", tolerance.makeMm());
    node.put("looseMm", tolerance.looseMm());
    return writer.finish(HERE.child("tolerance"), node);
  }
}
