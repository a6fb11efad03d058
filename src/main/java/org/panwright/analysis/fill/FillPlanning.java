package org.panwright.analysis.fill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;
import org.panwright.kit.Well;

/** Makes a {@link FillPlan}. */
final class FillPlanning {
  /** Sizes nearly every maker sells, in ml (common practice); used where the stock shows none. */
  private static final List<Double> USUAL_SIZES_ML = List.of(5.0, 15.0);

  /** Rests of the sums, in ml: less than the figures show. */
  private static final double NOTHING_ML = 0.005;

  private final Kit kit;
  private final Stock stock;
  private final FillPractice practice;
  private final List<String> lineupIds;
  private final Sharing sharing;

  FillPlanning(Kit kit, List<String> lineupIds, Sharing sharing) {
    this.kit = kit;
    this.stock = kit.stock();
    this.practice = stock.practice();
    this.lineupIds = List.copyOf(new LinkedHashSet<>(lineupIds));
    this.sharing = sharing;
  }

  FillPlan plan() {
    List<PlannedWell> asked = asked();
    Set<String> paintIds = new LinkedHashSet<>();
    asked.forEach(well -> paintIds.add(well.paintId()));
    List<PlannedWell> wells = new ArrayList<>(asked);
    List<TubeDraw> draws = new ArrayList<>();
    List<PaintDemand> demands = new ArrayList<>();
    for (String paintId : paintIds) {
      List<Tube> tubes = TubeOrder.of(stock.tubesOf(paintId));
      double given = give(wells, paintId, stock.leftMl(paintId));
      List<TubeDraw> drawn = draw(tubes, given);
      draws.addAll(drawn);
      double need =
          asked.stream()
              .filter(well -> well.paintId().equals(paintId))
              .mapToDouble(PlannedWell::needMl)
              .sum();
      demands.add(demand(paintId, need, tubes, drawn));
    }
    return new FillPlan(lineupIds, sharing, wells, draws, demands);
  }

  private List<PlannedWell> asked() {
    List<PlannedWell> asked = new ArrayList<>();
    Map<List<String>, String> taken = new HashMap<>();
    for (String id : lineupIds) {
      Lineup lineup =
          kit.lineup(id)
              .orElseThrow(() -> new IllegalArgumentException("the kit has no lineup " + id));
      Box box = kit.boxOf(lineup);
      for (Well well : box.wells()) {
        Optional<Filling> filling = lineup.in(well.id());
        if (filling.isEmpty()) {
          continue;
        }
        String paintId = filling.get().paintId();
        String before = taken.putIfAbsent(List.of(box.id(), well.id()), paintId);
        if (before == null || !before.equals(paintId)) {
          asked.add(ask(lineup, box, well, filling.get(), before != null));
        }
      }
    }
    return asked;
  }

  private PlannedWell ask(Lineup lineup, Box box, Well well, Filling filling, boolean spare) {
    String paintId = filling.paintId();
    Optional<FilledWell> there = stock.in(box.id(), well.id());
    Optional<FilledWell> inPlace = there.filter(f -> f.paintId().equals(paintId));
    Optional<FilledWell> aside = stock.aside(box.id(), well.id(), paintId);
    double held = inPlace.or(() -> aside).map(FilledWell::leftMl).orElse(0.0);
    Optional<String> other =
        there
            .filter(f -> !spare && f.leftMl() > 0)
            .map(FilledWell::paintId)
            .filter(id -> !id.equals(paintId));
    Optional<PanKind> pan = stock.panFor(well);
    double target = targetMl(pan, filling.fill());
    boolean isTaken = spare && pan.isEmpty();
    double wet = isTaken ? 0 : practice.wetMl(Math.max(0, target - held));
    return new PlannedWell(
        lineup.id(),
        box.id(),
        well.id(),
        paintId,
        filling.fill(),
        pan.map(PanKind::id),
        target,
        held,
        other,
        held > 0 && wet < PlannedWell.LEAST_ML ? 0 : wet,
        0,
        new FillLayers(List.of(), 0),
        spare,
        inPlace.isEmpty() && aside.isPresent());
  }

  /** Dry paint of a full or half filled pan, or of a dab. */
  private double targetMl(Optional<PanKind> pan, Fill fill) {
    if (pan.isEmpty() || fill == Fill.DAB) {
      return pan.map(p -> Math.min(practice.dabMl(), p.brimMl())).orElse(practice.dabMl());
    }
    double height = practice.fullHeight() * (fill == Fill.HALF ? 0.5 : 1);
    return pan.get().ml(height);
  }

  /** Gives the wells of a paint their part of what there is; how much that is together. */
  private double give(List<PlannedWell> wells, String paintId, double supplyMl) {
    List<Integer> places = new ArrayList<>();
    List<Sharing.Claim> claims = new ArrayList<>();
    for (int i = 0; i < wells.size(); i++) {
      PlannedWell well = wells.get(i);
      if (well.paintId().equals(paintId) && well.needMl() > 0) {
        places.add(i);
        claims.add(new Sharing.Claim(well.heldMl(), well.targetMl(), practice.wetMl(1)));
      }
    }
    double[] given = sharing.share(claims, supplyMl);
    double sum = 0;
    for (int i = 0; i < given.length; i++) {
      PlannedWell well = wells.get(places.get(i));
      double ml = given[i] < NOTHING_ML ? 0 : given[i];
      wells.set(places.get(i), withGiven(well, ml));
      sum += ml;
    }
    return sum;
  }

  private PlannedWell withGiven(PlannedWell well, double ml) {
    double brim =
        well.panId().flatMap(stock::pan).map(PanKind::brimMl).orElse(Double.POSITIVE_INFINITY);
    double thickest =
        well.panId().isEmpty() || well.fill() == Fill.DAB
            ? Double.POSITIVE_INFINITY
            : practice.wetMl(fullMl(well)) / practice.layers();
    return new PlannedWell(
        well.lineupId(),
        well.boxId(),
        well.wellId(),
        well.paintId(),
        well.fill(),
        well.panId(),
        well.targetMl(),
        well.heldMl(),
        well.otherPaintId(),
        well.needMl(),
        ml,
        ml > 0
            ? FillLayers.of(ml, well.heldMl(), brim, thickest, practice)
            : new FillLayers(List.of(), 0),
        well.spare(),
        well.beside());
  }

  private double fullMl(PlannedWell well) {
    return targetMl(well.panId().flatMap(stock::pan), Fill.FULL);
  }

  private List<TubeDraw> draw(List<Tube> tubes, double ml) {
    List<TubeDraw> draws = new ArrayList<>();
    double missing = ml;
    for (Tube tube : tubes) {
      double used = Math.min(missing, tube.leftMl());
      missing -= used;
      draws.add(
          new TubeDraw(
              tube.id(), tube.paintId(), tube.leftMl(), used, tube.leftMl() / halfPanMl()));
    }
    return draws;
  }

  /** Wet paint that fills a half pan as usual. */
  private double halfPanMl() {
    return practice.wetMl(targetMl(stock.pan(PanKind.HALF_ID), Fill.FULL));
  }

  private PaintDemand demand(
      String paintId, double needMl, List<Tube> tubes, List<TubeDraw> drawn) {
    double have = tubes.stream().mapToDouble(Tube::leftMl).sum();
    double shortMl = needMl - have;
    Optional<Purchase> purchase =
        shortMl >= PlannedWell.LEAST_ML
            ? Optional.of(PurchaseSearch.cheapest(shortMl, offers(tubes)))
            : Optional.empty();
    OptionalDouble fill =
        tubes.stream()
            .filter(tube -> tube.price().isPresent())
            .mapToDouble(tube -> tube.pricePerMl().getAsDouble())
            .min();
    return new PaintDemand(
        paintId,
        needMl,
        have,
        cost(tubes, drawn),
        fill.isPresent() ? OptionalDouble.of(fill.getAsDouble() * halfPanMl()) : fill,
        purchase);
  }

  private static OptionalDouble cost(List<Tube> tubes, List<TubeDraw> drawn) {
    double cost = 0;
    for (int i = 0; i < drawn.size(); i++) {
      OptionalDouble perMl = tubes.get(i).pricePerMl();
      if (drawn.get(i).usedMl() > 0 && perMl.isEmpty()) {
        return OptionalDouble.empty();
      }
      cost += drawn.get(i).usedMl() * perMl.orElse(0);
    }
    return OptionalDouble.of(cost);
  }

  /** The sizes this paint was bought in, each at its lowest price; the usual sizes if none. */
  private static List<PurchaseSearch.Offer> offers(List<Tube> tubes) {
    Map<Double, OptionalDouble> bySize = new LinkedHashMap<>();
    for (Tube tube : tubes) {
      bySize.merge(
          tube.sizeMl(),
          tube.price(),
          (a, b) -> a.isEmpty() || (b.isPresent() && b.getAsDouble() < a.getAsDouble()) ? b : a);
    }
    if (bySize.values().stream().anyMatch(OptionalDouble::isPresent)) {
      bySize.values().removeIf(OptionalDouble::isEmpty);
    } else if (bySize.isEmpty()) {
      USUAL_SIZES_ML.forEach(size -> bySize.put(size, OptionalDouble.empty()));
    }
    return bySize.entrySet().stream()
        .map(entry -> new PurchaseSearch.Offer(entry.getKey(), entry.getValue()))
        .toList();
  }
}
