package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Box;
import org.panwright.kit.Filling;
import org.panwright.kit.Fixture;
import org.panwright.kit.KeptMix;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.MutedFinding;
import org.panwright.kit.Outing;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.Well;
import org.panwright.paint.Handling;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Swatchbook;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** Turns a kit into the JSON tree of its file, together with all that was kept for it. */
final class KitWriter {
  private final Keepsake keepsake;
  private final Predicate<Address> needed;
  private final BiConsumer<Address, ObjectNode> finished;

  private KitWriter(
      Keepsake keepsake, Predicate<Address> needed, BiConsumer<Address, ObjectNode> finished) {
    this.keepsake = keepsake;
    this.needed = needed;
    this.finished = finished;
  }

  /** The tree of the file. */
  static ObjectNode write(Kit kit, Keepsake keepsake) {
    return new KitWriter(keepsake, keepsake::holdsPartOf, keepsake::complete).kit(kit);
  }

  /** The tree of a box's own file: the box, and those kinds of pans its wells name. */
  static ObjectNode box(Box box, List<PanKind> pans) {
    KitWriter writer = new KitWriter(Keepsake.NOTHING, address -> false, (address, node) -> {});
    List<PanKind> named =
        pans.stream()
            .filter(
                pan -> box.wells().stream().anyMatch(w -> w.panId().equals(Optional.of(pan.id()))))
            .toList();
    ObjectNode node = group();
    node.put("schemaVersion", KitReader.VERSION);
    node.set("boxes", writer.list(Address.KIT, "boxes", List.of(box), Box::id, writer::box));
    StockNodes stock = new StockNodes(writer);
    node.set("pans", writer.list(Address.KIT, "pans", named, PanKind::id, stock::pan));
    return node;
  }

  /** The keepsake of a kit just read, with each original told what stands in for it. */
  static Keepsake withStandIns(Kit kit, Keepsake keepsake) {
    Map<Address, ObjectNode> groups = new HashMap<>();
    new KitWriter(Keepsake.NOTHING, address -> true, groups::put).kit(kit);
    return keepsake.withStandIns(
        original -> {
          ObjectNode group = groups.get(original.group());
          return Optional.ofNullable(group == null ? null : group.get(original.field()));
        });
  }

  private ObjectNode kit(Kit kit) {
    ObjectNode node = group();
    node.put("schemaVersion", KitReader.VERSION);
    node.put("name", kit.name());
    putText(node, "note", kit.note());
    OutingWriter outings = new OutingWriter(this);
    node.set("paper", paper(kit.paper()));
    node.set("washes", washes(kit.washes()));
    ObjectNode shelf = group();
    Address shelfAddress = Address.KIT.child("shelf");
    shelf.set("paints", list(shelfAddress, "paints", kit.shelf().paints(), Paint::id, this::paint));
    node.set("shelf", finish(shelfAddress, shelf));
    node.set("boxes", list(Address.KIT, "boxes", kit.boxes(), Box::id, this::box));
    node.set("lineups", list(Address.KIT, "lineups", kit.lineups(), Lineup::id, this::lineup));
    node.set("outings", list(Address.KIT, "outings", kit.outings(), Outing::id, outings::outing));
    Address stock = Address.KIT.child("stock");
    if (!kit.stock().equals(Stock.NONE) || needed.test(stock) || keepsake.holdsWithin(stock)) {
      node.set("stock", new StockNodes(this).stock(kit.stock()));
    }
    return finish(Address.KIT, node);
  }

  private ObjectNode paper(Paper paper) {
    ObjectNode node = group();
    node.put("name", paper.name());
    node.set("reflectance", numbers(paper.reflectance()));
    return finish(Address.KIT.child("paper"), node);
  }

  private ObjectNode washes(WashStrengths washes) {
    ObjectNode node = group();
    for (Wash wash : Wash.values()) {
      node.put(Spelling.of(wash), washes.load(wash));
    }
    return finish(Address.KIT.child("washes"), node);
  }

  private ObjectNode paint(Address here, Paint paint) {
    ObjectNode node = group();
    node.put("id", paint.id());
    node.put("name", paint.name());
    putText(node, "maker", paint.maker());
    node.put("ownership", Spelling.of(paint.ownership()));
    Repeats repeats = new Repeats();
    node.set(
        "pigments",
        list(
            here,
            "pigments",
            paint.pigments(),
            share -> repeats.mark(share.pigment().toString()),
            this::pigment));
    node.set("handling", handling(here.child("handling"), paint.handling()));
    paint.measured().ifPresent(o -> node.set("optics", optics(here.child("optics"), o)));
    putText(node, "note", paint.note());
    putSwatchbook(here, node, paint.swatchbook());
    return finish(here, node);
  }

  private void putSwatchbook(Address paint, ObjectNode node, Swatchbook book) {
    SwatchbookWriter writer = new SwatchbookWriter(finished, this::optics);
    ArrayNode coats = list(paint, "swatches", book.coats(), PaintedCoat::id, writer::coat);
    book.origin()
        .ifPresent(
            origin -> node.set("opticsFrom", writer.origin(paint.child("opticsFrom"), origin)));
    Repeats repeats = new Repeats();
    ArrayNode former =
        list(
            paint,
            "formerOptics",
            book.former(),
            entry -> repeats.mark(SwatchbookReader.mark(entry.origin())),
            writer::former);
    putList(node, "swatches", coats);
    putList(node, "formerOptics", former);
  }

  private ObjectNode pigment(Address here, PigmentShare share) {
    ObjectNode node = group();
    node.put("code", share.pigment().code());
    putText(node, "variant", share.pigment().variant());
    node.put("share", share.share());
    return finish(here, node);
  }

  private ObjectNode handling(Address here, Handling handling) {
    ObjectNode node = group();
    node.put("transparency", Spelling.of(handling.transparency()));
    node.put("staining", Spelling.of(handling.staining()));
    node.put("granulation", Spelling.of(handling.granulation()));
    node.put("lightfastness", Spelling.of(handling.lightfastness()));
    return finish(here, node);
  }

  private ObjectNode optics(Address here, Optics optics) {
    ObjectNode node = group();
    node.put("source", Spelling.of(optics.source()));
    node.put("expectedError", optics.expectedError());
    if (optics.gloss() > 0) {
      node.put("gloss", optics.gloss());
    }
    node.set("absorption", numbers(optics.absorption()));
    node.set("scattering", numbers(optics.scattering()));
    return finish(here, node);
  }

  private ObjectNode box(Address here, Box box) {
    ObjectNode node = group();
    node.put("id", box.id());
    node.put("name", box.name());
    node.put("widthMm", box.widthMm());
    node.put("heightMm", box.heightMm());
    node.put("lidWidthMm", box.lidWidthMm());
    node.put("lidHeightMm", box.lidHeightMm());
    box.depthMm().ifPresent(mm -> node.put("depthMm", mm));
    node.set("wells", list(here, "wells", box.wells(), Well::id, this::well));
    if (!box.fixtures().isEmpty() || keepsake.holds(here, "parts")) {
      node.set("parts", list(here, "parts", box.fixtures(), Fixture::id, this::fixture));
    }
    return finish(here, node);
  }

  private ObjectNode well(Address here, Well well) {
    ObjectNode node = group();
    node.put("id", well.id());
    node.put("label", well.label());
    node.put("kind", Spelling.of(well.kind()));
    node.put("xMm", well.xMm());
    node.put("yMm", well.yMm());
    node.put("widthMm", well.widthMm());
    node.put("heightMm", well.heightMm());
    well.panId().ifPresent(id -> node.put("pan", id));
    return finish(here, node);
  }

  private ObjectNode fixture(Address here, Fixture fixture) {
    ObjectNode node = group();
    node.put("id", fixture.id());
    node.put("kind", Spelling.of(fixture.kind()));
    if (fixture.inLid()) {
      node.put("inLid", true);
    }
    node.put("xMm", fixture.xMm());
    node.put("yMm", fixture.yMm());
    node.put("widthMm", fixture.widthMm());
    node.put("heightMm", fixture.heightMm());
    if (fixture.thicknessMm() > 0) {
      node.put("thicknessMm", fixture.thicknessMm());
    }
    return finish(here, node);
  }

  private ObjectNode lineup(Address here, Lineup lineup) {
    ObjectNode node = group();
    node.put("id", lineup.id());
    node.put("name", lineup.name());
    node.put("box", lineup.boxId());
    node.set(
        "fillings",
        list(
            here,
            "fillings",
            List.copyOf(lineup.fillings().entrySet()),
            Map.Entry::getKey,
            this::filling));
    putList(node, "muted", list(here, "muted", lineup.muted(), MutedFinding::key, this::muted));
    lineup
        .cardMixes()
        .ifPresent(
            mixes ->
                node.set("cardMixes", list(here, "cardMixes", mixes, KeptMix::key, this::mix)));
    lineup
        .wishes()
        .ifPresent(
            wishes ->
                node.set("wishes", new WishesWriter(this).wishes(here.child("wishes"), wishes)));
    return finish(here, node);
  }

  private ObjectNode mix(Address here, KeptMix mix) {
    ObjectNode node = group();
    node.set("parts", list(here, "parts", mix.parts(), KeptMix.Part::paintId, this::part));
    node.put("wash", Spelling.of(mix.wash()));
    putText(node, "name", mix.name());
    return finish(here, node);
  }

  private ObjectNode part(Address here, KeptMix.Part part) {
    ObjectNode node = group();
    node.put("paint", part.paintId());
    node.put("parts", part.parts());
    return finish(here, node);
  }

  private ObjectNode muted(Address here, MutedFinding mute) {
    ObjectNode node = group();
    node.put("finding", mute.key());
    putText(node, "reason", mute.reason());
    return finish(here, node);
  }

  private ObjectNode filling(Address here, Map.Entry<String, Filling> entry) {
    ObjectNode node = group();
    node.put("well", entry.getKey());
    node.put("paint", entry.getValue().paintId());
    node.put("fill", Spelling.of(entry.getValue().fill()));
    return finish(here, node);
  }

  /** A list of groups, each at the address of its id, with what was kept of the list. */
  <T> ArrayNode list(
      Address group,
      String name,
      List<T> entries,
      Function<T, String> id,
      BiFunction<Address, T, ObjectNode> write) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    Set<String> ids = new HashSet<>();
    for (T entry : entries) {
      String entryId = id.apply(entry);
      ids.add(entryId);
      list.add(write.apply(group.entry(name, entryId), entry));
    }
    keepsake.complete(group, name, list, ids);
    return list;
  }

  /** Whether a group must be written although all in it is as usual. */
  boolean isNeeded(Address group) {
    return needed.test(group);
  }

  /** The group with what was kept of it. */
  ObjectNode finish(Address here, ObjectNode node) {
    finished.accept(here, node);
    return node;
  }

  static ObjectNode group() {
    return JsonNodeFactory.instance.objectNode();
  }

  static void putText(ObjectNode node, String field, String text) {
    if (!text.isEmpty()) {
      node.put(field, text);
    }
  }

  static void putList(ObjectNode node, String field, ArrayNode list) {
    if (!list.isEmpty()) {
      node.set(field, list);
    }
  }

  static ArrayNode numbers(Spectrum spectrum) {
    List<JsonNode> values = new ArrayList<>();
    for (double value : spectrum.toArray()) {
      values.add(JsonNodeFactory.instance.numberNode(value));
    }
    return JsonNodeFactory.instance.arrayNode().addAll(values);
  }
}
