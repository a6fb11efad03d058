package org.panwright.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One thing the painter does to tubes, pans and filled wells. */
public sealed interface StockEdit extends Edit {
  /** Puts a tube into the stock. */
  record AddTube(Tube tube) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      List<Tube> more = new ArrayList<>(kit.stock().tubes());
      more.add(tube);
      return kit.withStock(kit.stock().withTubes(more));
    }
  }

  /** Changes what is known of a tube; its id stays. */
  record ChangeTube(Tube tube) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      requireTube(kit, tube.id());
      return kit.withStock(
          kit.stock()
              .withTubes(
                  kit.stock().tubes().stream()
                      .map(t -> t.id().equals(tube.id()) ? tube : t)
                      .toList()));
    }
  }

  /** Throws a tube away. */
  record RemoveTube(String tubeId) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      requireTube(kit, tubeId);
      return kit.withStock(
          kit.stock()
              .withTubes(
                  kit.stock().tubes().stream().filter(t -> !t.id().equals(tubeId)).toList()));
    }
  }

  /** Says what the prices are in. */
  record SetCurrency(String currency) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withStock(kit.stock().withCurrency(currency));
    }
  }

  /** Changes the kinds of pans; wells whose kind is gone take the usual one. */
  record SetPans(List<PanKind> pans) implements StockEdit {
    public SetPans {
      pans = List.copyOf(pans);
    }

    @Override
    public Kit apply(Kit kit) {
      return kit.withPans(pans);
    }
  }

  /** Changes how pans are filled. */
  record SetPractice(FillPractice practice) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withStock(kit.stock().withPractice(practice));
    }
  }

  /** Changes how exactly pans have to fit. */
  record SetTolerance(FitTolerance tolerance) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withStock(kit.stock().withTolerance(tolerance));
    }
  }

  /**
   * Fills wells out of tubes. A pan of another paint that was in one is laid aside, unless it is
   * empty.
   *
   * @param wells as they are afterwards
   * @param aside pans filled for wells that hold another paint; one whose paint is in its well
   *     after all is that pan
   * @param usedMl wet paint pressed out, by tube id
   * @param day when
   */
  record FillWells(
      List<FilledWell> wells, List<FilledWell> aside, Map<String, Double> usedMl, LocalDate day)
      implements StockEdit {
    public FillWells {
      wells = List.copyOf(wells);
      aside = List.copyOf(aside);
      usedMl = Map.copyOf(usedMl);
    }

    @Override
    public Kit apply(Kit kit) {
      usedMl.keySet().forEach(id -> requireTube(kit, id));
      Stock stock = kit.stock();
      for (FilledWell well : wells) {
        stock = putIn(kit, stock, well);
      }
      for (FilledWell pan : aside) {
        boolean isInPlace =
            stock
                .in(pan.boxId(), pan.wellId())
                .filter(there -> there.paintId().equals(pan.paintId()))
                .isPresent();
        stock = isInPlace ? stock.filling(pan) : stock.layingAside(pan);
      }
      return kit.withStock(
          stock.withTubes(
              stock.tubes().stream()
                  .map(t -> usedMl.containsKey(t.id()) ? t.less(usedMl.get(t.id()), day) : t)
                  .toList()));
    }
  }

  /** Puts pans that lie beside their boxes into their wells, and lays aside what was in these. */
  record ExchangePans(List<FilledWell> pans) implements StockEdit {
    public ExchangePans {
      pans = List.copyOf(pans);
    }

    @Override
    public Kit apply(Kit kit) {
      Stock stock = kit.stock();
      for (FilledWell pan : pans) {
        if (!stock.aside().contains(pan)) {
          throw new IllegalArgumentException("no such pan lies beside its box: " + pan);
        }
        stock = putIn(kit, stock, pan);
      }
      return kit.withStock(stock);
    }
  }

  /** Cleans out a pan that lies beside its box. */
  record CleanAside(String boxId, String wellId, String paintId) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withStock(kit.stock().withoutAside(boxId, wellId, paintId));
    }
  }

  /** Says what really is in one well, or that nothing is. */
  record SetFilled(String boxId, String wellId, Optional<FilledWell> now) implements StockEdit {
    @Override
    public Kit apply(Kit kit) {
      Stock emptied = kit.stock().keepingFilled(f -> !f.isIn(boxId, wellId));
      return kit.withStock(now.map(emptied::filling).orElse(emptied));
    }
  }

  /**
   * Wears filled wells down by what an outing used; the outing remembers it.
   *
   * @param outingId the outing
   * @param boxId the box that was used
   * @param usedMl dry paint used, by well id; wells that are not filled are passed over
   */
  record WearDown(String outingId, String boxId, Map<String, Double> usedMl) implements StockEdit {
    public WearDown {
      usedMl = Map.copyOf(usedMl);
    }

    @Override
    public Kit apply(Kit kit) {
      Outing outing =
          kit.outing(outingId)
              .filter(it -> !it.paintTaken())
              .orElseThrow(
                  () -> new IllegalArgumentException("no paint to take for outing " + outingId));
      Stock worn =
          kit.stock()
              .withFilled(
                  kit.stock().filled().stream()
                      .map(
                          f ->
                              f.boxId().equals(boxId) && usedMl.containsKey(f.wellId())
                                  ? f.worn(usedMl.get(f.wellId()))
                                  : f)
                      .toList());
      return new Edit.ChangeOuting(outing.withPaintTaken()).apply(kit.withStock(worn));
    }
  }

  /**
   * Adds a box that comes from elsewhere with the kinds of pans in it.
   *
   * <p>A kind the kit has under the same id and with the same figures is taken for the same; any
   * other comes in under an id of its own. The box gets an id no box of the kit has.
   */
  record AddSharedBox(Box box, List<PanKind> pans) implements StockEdit {
    public AddSharedBox {
      pans = List.copyOf(pans);
    }

    @Override
    public Kit apply(Kit kit) {
      List<PanKind> all = new ArrayList<>(kit.stock().pans());
      Map<String, String> newIds = new HashMap<>();
      for (PanKind pan : pans) {
        boolean used = box.wells().stream().anyMatch(w -> w.panId().equals(Optional.of(pan.id())));
        if (used && !all.contains(pan)) {
          String id = fresh(pan.id(), all.stream().map(PanKind::id).toList());
          newIds.put(pan.id(), id);
          all.add(pan.withId(id));
        }
      }
      Box added =
          box.withWells(
                  box.wells().stream()
                      .map(well -> well.withPan(well.panId().map(p -> newIds.getOrDefault(p, p))))
                      .toList())
              .renamed(fresh(box.id(), kit.boxes().stream().map(Box::id).toList()), box.name());
      return new Edit.AddBox(added).apply(kit.withPans(all));
    }

    private static String fresh(String id, List<String> taken) {
      String tried = id;
      for (int number = 2; taken.contains(tried); number++) {
        tried = id + "-" + number;
      }
      return tried;
    }
  }

  /** A dab is no pan: what was in a place without one is gone. */
  private static Stock putIn(Kit kit, Stock stock, FilledWell pan) {
    boolean hasPan =
        kit.box(pan.boxId())
            .flatMap(box -> box.find(pan.wellId()))
            .flatMap(stock::panFor)
            .isPresent();
    Optional<FilledWell> out =
        stock
            .in(pan.boxId(), pan.wellId())
            .filter(before -> hasPan && before.leftMl() > 0)
            .filter(before -> !before.paintId().equals(pan.paintId()));
    Stock placed = stock.withoutAside(pan.boxId(), pan.wellId(), pan.paintId()).filling(pan);
    return out.map(placed::layingAside).orElse(placed);
  }

  private static void requireTube(Kit kit, String id) {
    if (kit.stock().tube(id).isEmpty()) {
      throw new IllegalArgumentException("the kit has no tube " + id);
    }
  }
}
