package org.panwright.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.kit.Box;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FilledWell;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.Kit;
import org.panwright.kit.PanKind;
import org.panwright.kit.Remainder;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;

/** The sample kit with tubes, filled wells, a kind of pan of its own and a box with parts. */
final class StockedKit {
  static final Kit KIT =
      SampleKit.KIT.withStock(stock()).withBoxes(List.of(box()), SampleKit.KIT.lineups());

  private StockedKit() {}

  private static Box box() {
    Box plain = SampleKit.KIT.boxes().get(0);
    return new Box(
        plain.id(),
        plain.name(),
        plain.widthMm(),
        plain.heightMm(),
        plain.lidWidthMm(),
        plain.lidHeightMm(),
        List.of(
            plain.wells().get(0),
            plain.wells().get(1).withPan(Optional.of("own")),
            plain.wells().get(2)),
        OptionalDouble.of(12.5),
        List.of(
            new Fixture("f1", FixtureKind.MIXING_AREA, true, 1, 2, 100, 60, 0),
            new Fixture("f2", FixtureKind.DAB_STRIP, false, 55, 0, 20, 30, 0),
            new Fixture("f3", FixtureKind.MAGNET, false, 0, 0, 40, 10, 0.8)));
  }

  private static Stock stock() {
    List<PanKind> pans = new ArrayList<>(PanKind.USUAL);
    pans.add(
        new PanKind(
            "own",
            "clay dish",
            new PanKind.Extent(29, 18, 9),
            new PanKind.Extent(26, 15, 7),
            0.5,
            2.6));
    return new Stock(
        "shells",
        List.of(
            new Tube(
                "t1",
                "p1",
                15,
                new Remainder.ByWeight(21.5, 6.25, 1.4),
                OptionalDouble.of(12.5),
                Optional.of(LocalDate.of(2025, 11, 3)),
                "cap sticks"),
            new Tube(
                "t2",
                "p1",
                5,
                new Remainder.ByVolume(4.5),
                OptionalDouble.empty(),
                Optional.empty(),
                "")),
        List.of(new FilledWell("b1", "w2", "p1", LocalDate.of(2026, 3, 1), 1.7, 0.9)),
        List.of(new FilledWell("b1", "w2", "p2", LocalDate.of(2026, 3, 2), 1.6, 0.3)),
        pans,
        new FillPractice(0.8, 2, 4.5, 0.3, 0.15, 0.2),
        new FitTolerance(0.4, 1.2));
  }
}
