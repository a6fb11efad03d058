package org.panwright.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** The part of {@link RandomEdits} that handles tubes, pans and filled wells. */
final class RandomStockEdits {
  private static final LocalDate DAY = LocalDate.of(2026, 4, 1);

  private final Random random;

  RandomStockEdits(Random random) {
    this.random = random;
  }

  /** An edit that fits {@code kit}, if the kit has what it needs. */
  Optional<Edit> next(Kit kit, String freshId) {
    Stock stock = kit.stock();
    Optional<String> paint = any(kit.shelf().paints()).map(p -> p.id());
    return switch (random.nextInt(17)) {
      case 0, 1 -> paint.map(p -> new StockEdit.AddTube(tube(freshId, p)));
      case 2 ->
          paint.flatMap(
              p -> any(stock.tubes()).map(t -> new StockEdit.ChangeTube(tube(t.id(), p))));
      case 3 -> any(stock.tubes()).map(t -> new StockEdit.RemoveTube(t.id()));
      case 4 -> Optional.of(new StockEdit.SetCurrency(freshId));
      case 5 -> Optional.of(new StockEdit.SetPans(pans(freshId)));
      case 6 ->
          Optional.of(
              new StockEdit.SetPractice(
                  new FillPractice(0.8, 1 + random.nextInt(6), 2, 0.3, 0.2, 0.25)));
      case 7 ->
          Optional.of(new StockEdit.SetTolerance(new FitTolerance(random.nextInt(20) / 10.0, 1.5)));
      case 8, 11, 12 ->
          paint.flatMap(
              p ->
                  any(kit.boxes())
                      .map(
                          box ->
                              new StockEdit.FillWells(
                                  List.of(filled(box, p)),
                                  List.of(filled(box, p)),
                                  any(stock.tubes()).map(t -> Map.of(t.id(), 0.5)).orElse(Map.of()),
                                  DAY)));
      case 9 ->
          any(stock.filled())
              .map(f -> new StockEdit.SetFilled(f.boxId(), f.wellId(), Optional.empty()));
      case 10 ->
          Optional.of(
              new StockEdit.AddSharedBox(
                  BoxPlan.ofHalfPans(1, 2, 0).box("b-" + freshId), PanKind.USUAL));
      case 13 -> any(stock.aside()).map(f -> new StockEdit.ExchangePans(List.of(f)));
      case 14 ->
          any(stock.aside()).map(f -> new StockEdit.CleanAside(f.boxId(), f.wellId(), f.paintId()));
      default ->
          any(kit.outings().stream().filter(o -> !o.paintTaken()).toList())
              .flatMap(
                  o ->
                      any(stock.filled())
                          .map(
                              f ->
                                  new StockEdit.WearDown(
                                      o.id(), f.boxId(), Map.of(f.wellId(), 0.1))));
    };
  }

  private Tube tube(String id, String paintId) {
    Remainder left =
        random.nextBoolean()
            ? new Remainder.ByVolume(random.nextInt(50) / 10.0)
            : new Remainder.ByWeight(4 + random.nextInt(5), 3.5, 1.3);
    return new Tube(
        id, paintId, 5, left, OptionalDouble.of(random.nextInt(20)), Optional.of(DAY), "");
  }

  private FilledWell filled(Box box, String paintId) {
    Well well = box.wells().get(random.nextInt(box.wells().size()));
    return new FilledWell(box.id(), well.id(), paintId, DAY, 1.5, 1.5);
  }

  private static List<PanKind> pans(String name) {
    List<PanKind> pans = new ArrayList<>(PanKind.USUAL);
    PanKind half = pans.get(1);
    pans.set(1, new PanKind(half.id(), name, half.outer(), half.inner(), half.taperMm(), 2.2));
    return pans;
  }

  private <T> Optional<T> any(List<T> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(random.nextInt(list.size())));
  }
}
