package org.panwright.store;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import org.panwright.colour.Lab;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.FormerOptics;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.PaintedCoat;

/** Writes the coats kept with a paint and the history of its optics. */
final class SwatchbookWriter {
  private final BiConsumer<Address, ObjectNode> finished;
  private final BiFunction<Address, Optics, ObjectNode> optics;

  /**
   * @param finished told of every group when it is complete
   * @param optics writes optics
   */
  SwatchbookWriter(
      BiConsumer<Address, ObjectNode> finished, BiFunction<Address, Optics, ObjectNode> optics) {
    this.finished = finished;
    this.optics = optics;
  }

  ObjectNode coat(Address here, PaintedCoat coat) {
    ObjectNode node = group();
    node.put("id", coat.id());
    node.set("dry", reading(here.child("dry"), coat.dry()));
    coat.wet().ifPresent(wet -> node.set("wet", reading(here.child("wet"), wet)));
    coat.load().ifPresent(load -> node.put("load", load));
    node.put("strength", Spelling.of(coat.strength()));
    node.put("over", Spelling.of(coat.over()));
    coat.ground().ifPresent(bare -> node.set("ground", reading(here.child("ground"), bare)));
    coat.mixedWith()
        .ifPresent(other -> node.set("mixedWith", admixture(here.child("mixedWith"), other)));
    coat.date().ifPresent(date -> node.put("date", date.toString()));
    KitWriter.putText(node, "source", coat.source());
    KitWriter.putText(node, "note", coat.note());
    return finish(here, node);
  }

  ObjectNode origin(Address here, OpticsOrigin origin) {
    ObjectNode node = group();
    origin.date().ifPresent(date -> node.put("date", date.toString()));
    node.put("reason", Spelling.of(origin.reason()));
    KitWriter.putText(node, "detail", origin.detail());
    return finish(here, node);
  }

  ObjectNode former(Address here, FormerOptics former) {
    ObjectNode node = group();
    node.set("from", origin(here.child("from"), former.origin()));
    former.optics().ifPresent(o -> node.set("optics", optics.apply(here.child("optics"), o)));
    return finish(here, node);
  }

  private ObjectNode reading(Address here, CoatReading reading) {
    ObjectNode node = group();
    if (reading instanceof CoatReading.OfSpectrum measured) {
      node.set("reflectance", KitWriter.numbers(measured.reflectance()));
    } else {
      Lab lab = reading.lab();
      ObjectNode group = group();
      group.put("l", lab.l());
      group.put("a", lab.a());
      group.put("b", lab.b());
      node.set("lab", finish(here.child("lab"), group));
    }
    return finish(here, node);
  }

  private ObjectNode admixture(Address here, Admixture other) {
    ObjectNode node = group();
    node.put("kind", Spelling.of(other.kind()));
    KitWriter.putText(node, "paint", other.paintId());
    node.put("share", other.share());
    return finish(here, node);
  }

  private ObjectNode finish(Address here, ObjectNode node) {
    finished.accept(here, node);
    return node;
  }

  private static ObjectNode group() {
    return JsonNodeFactory.instance.objectNode();
  }
}
