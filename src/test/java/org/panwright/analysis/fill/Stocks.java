package org.panwright.analysis.fill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.kit.Box;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.Fill;
import org.panwright.kit.FillPractice;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.PanKind;
import org.panwright.kit.Remainder;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

/** Invented kits with round figures, so that fill plans can be worked out by hand. */
final class Stocks {
  static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  /** Half the height, two layers of two days, half lost on drying, dabs of 0.25 ml. */
  static final FillPractice ROUND = new FillPractice(0.5, 2, 2, 0.5, 0.25, 0.25);

  private Stocks() {}

  /** Two boxes of four half pans and a dab, each with a lineup of this blue and yellow. */
  static Kit kit(Tube... tubes) {
    Kit kit = Kit.empty("round");
    kit = kit.withShelf(new Shelf(List.of(paint("blue", "PB29"), paint("yellow", "PY154"))));
    Box tin = BoxPlan.ofHalfPans(1, 4, 1).box("tin");
    Box slim = BoxPlan.ofHalfPans(1, 4, 1).box("slim").renamed("slim", "Slim box");
    kit =
        kit.withBoxes(
            List.of(tin, slim),
            List.of(lineup("first", "tin"), lineup("second", "slim"), lineup("spare", "tin")));
    return kit.withStock(stock(tubes));
  }

  /** Straight pans of 2 ml to the brim, so that a full one is 1 ml dry and takes 2 ml wet. */
  static Stock stock(Tube... tubes) {
    List<PanKind> pans = new ArrayList<>();
    for (PanKind pan : PanKind.USUAL) {
      double brim = pan.id().equals(PanKind.HALF_ID) ? 2 : pan.brimMl();
      pans.add(new PanKind(pan.id(), pan.name(), pan.outer(), pan.inner(), 0, brim));
    }
    return Stock.NONE.withPans(pans).withPractice(ROUND).withTubes(List.of(tubes));
  }

  static Tube tube(String id, String paintId, double size, double left, double price) {
    return new Tube(
        id,
        paintId,
        size,
        new Remainder.ByVolume(left),
        Double.isNaN(price) ? OptionalDouble.empty() : OptionalDouble.of(price),
        Optional.empty(),
        "");
  }

  /** Fills a well of a lineup. */
  static Kit with(Kit kit, String lineupId, String wellId, String paintId, Fill fill) {
    Lineup lineup = kit.lineup(lineupId).orElseThrow();
    return kit.replacing(lineup.with(wellId, Optional.of(new Filling(paintId, fill))));
  }

  private static Lineup lineup(String id, String boxId) {
    Map<String, Filling> none = new LinkedHashMap<>();
    return new Lineup(id, id, boxId, none);
  }

  private static Paint paint(String id, String code) {
    return new Paint(
        id,
        id,
        "",
        List.of(new PigmentShare(PigmentName.of(code), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.NONE, Lightfastness.I),
        Ownership.OWNED,
        Optional.empty(),
        "");
  }
}
