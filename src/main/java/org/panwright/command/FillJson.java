package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PaintDemand;
import org.panwright.analysis.fill.PaintPlaces;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Purchase;
import org.panwright.analysis.fill.TubeDraw;
import org.panwright.analysis.outing.Refill;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Tube;
import org.panwright.words.FillWords;

/** The answer of {@code fill --json}; volumes in ml to three decimals. */
final class FillJson {
  private final Kit kit;

  private FillJson(Kit kit) {
    this.kit = kit;
  }

  static ObjectNode of(Kit kit, FillPlan plan, Map<String, List<Refill>> refills, LocalDate today) {
    return new FillJson(kit).answer(plan, refills, today);
  }

  private ObjectNode answer(FillPlan plan, Map<String, List<Refill>> refills, LocalDate today) {
    ObjectNode node = Json.object();
    node.put("kit", kit.name());
    node.put("currency", kit.stock().currency());
    ArrayNode lineups = node.putArray("lineups");
    plan.lineupIds().forEach(id -> lineups.add(FillWords.lineup(id, kit)));
    node.put("sharing", plan.sharing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("dryingDays", plan.dryingDays());
    put(node, "usedCost", plan.usedCost());
    put(node, "purchaseCost", plan.purchaseCost());
    ArrayNode wells = node.putArray("wells");
    plan.wells().forEach(well -> wells.add(well(well)));
    ArrayNode tubes = node.putArray("tubes");
    plan.tubes().forEach(tube -> tubes.add(tube(tube)));
    ArrayNode paints = node.putArray("paints");
    plan.paints().forEach(paint -> paints.add(paint(paint)));
    ArrayNode list = node.putArray("refills");
    refills.forEach((id, entries) -> entries.forEach(refill -> list.add(refill(id, refill))));
    ArrayNode places = node.putArray("places");
    PaintPlaces.of(kit, today).forEach(place -> places.add(places(place)));
    return node;
  }

  private ObjectNode well(PlannedWell well) {
    ObjectNode node = Json.object();
    node.put("lineup", FillWords.lineup(well.lineupId(), kit));
    node.put("box", FillWords.box(well.boxId(), kit));
    node.put("position", position(well.boxId(), well.wellId()));
    node.put("paint", FillWords.paint(well.paintId(), kit));
    node.put("fill", FillWords.fill(well.fill()));
    node.put("targetMl", ml(well.targetMl()));
    node.put("heldMl", ml(well.heldMl()));
    node.put("needMl", ml(well.needMl()));
    node.put("givenMl", ml(well.givenMl()));
    ArrayNode layers = node.putArray("layersMl");
    well.layers().poursMl().forEach(pour -> layers.add(ml(pour)));
    node.put("dryingDays", well.layers().dryingDays());
    node.put("exchange", well.otherPaintId().map(id -> FillWords.paint(id, kit)).orElse(null));
    node.put("secondPan", well.spare());
    node.put("beside", well.beside());
    return node;
  }

  private ObjectNode tube(TubeDraw draw) {
    ObjectNode node = Json.object();
    node.put("paint", FillWords.paint(draw.paintId(), kit));
    node.put("sizeMl", kit.stock().tube(draw.tubeId()).map(Tube::sizeMl).orElse(0.0));
    node.put("beforeMl", ml(draw.beforeMl()));
    node.put("usedMl", ml(draw.usedMl()));
    node.put("afterMl", ml(draw.afterMl()));
    node.put("fills", Json.rounded(draw.fills(), 2));
    return node;
  }

  private ObjectNode paint(PaintDemand demand) {
    ObjectNode node = Json.object();
    node.put("paint", FillWords.paint(demand.paintId(), kit));
    node.put("needMl", ml(demand.needMl()));
    node.put("haveMl", ml(demand.haveMl()));
    node.put("shortMl", ml(demand.shortMl()));
    put(node, "usedCost", demand.usedCost());
    put(node, "fillCost", demand.fillCost());
    ArrayNode buy = node.putArray("buy");
    demand.purchase().ifPresent(p -> p.items().forEach(item -> buy.add(item(item))));
    return node;
  }

  private static ObjectNode item(Purchase.Item item) {
    ObjectNode node = Json.object();
    node.put("sizeMl", item.sizeMl());
    node.put("count", item.count());
    put(node, "price", item.price());
    return node;
  }

  private ObjectNode refill(String lineupId, Refill refill) {
    Lineup lineup = kit.lineup(lineupId).orElseThrow();
    ObjectNode node = Json.object();
    node.put("lineup", lineup.name());
    node.put("position", position(lineup.boxId(), refill.wellId()));
    node.put("paint", FillWords.paint(refill.paintId(), kit));
    node.put("why", refill.why().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("nowMl", ml(refill.nowMl()));
    node.put("targetMl", ml(refill.targetMl()));
    return node;
  }

  private ObjectNode places(PaintPlaces where) {
    ObjectNode node = Json.object();
    node.put("paint", FillWords.paint(where.paintId(), kit));
    node.put("tubes", where.tubes());
    node.put("leftMl", ml(where.leftMl()));
    node.put("doubled", where.isDoubled());
    ArrayNode places = node.putArray("places");
    for (PaintPlaces.Place place : where.places()) {
      ObjectNode entry = Json.object();
      entry.put("box", FillWords.box(place.boxId(), kit));
      entry.put("position", position(place.boxId(), place.wellId()));
      ArrayNode lineups = entry.putArray("lineups");
      place.lineupIds().forEach(id -> lineups.add(FillWords.lineup(id, kit)));
      entry.put("beside", place.beside());
      place
          .filled()
          .ifPresentOrElse(
              filled -> {
                entry.put("filledOn", filled.filledOn().toString());
                entry.put("leftMl", ml(filled.leftMl()));
              },
              () -> {
                entry.putNull("filledOn");
                entry.put("leftMl", 0.0);
              });
      places.add(entry);
    }
    return node;
  }

  private String position(String boxId, String wellId) {
    return kit.box(boxId).flatMap((Box box) -> box.find(wellId)).orElseThrow().label();
  }

  private static double ml(double ml) {
    return Json.rounded(ml, 3);
  }

  private static void put(ObjectNode node, String field, OptionalDouble amount) {
    if (amount.isPresent()) {
      node.put(field, Json.rounded(amount.getAsDouble(), 2));
    } else {
      node.putNull(field);
    }
  }
}
