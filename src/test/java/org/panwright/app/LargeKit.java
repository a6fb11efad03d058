package org.panwright.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.panwright.kit.Box;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;

/** An invented kit of any size: paints of one pigment of the library, then mixtures of two. */
final class LargeKit {
  private static final int COLUMNS = 8;

  private LargeKit() {}

  /**
   * A shelf of paints and two boxes of half pans with a lineup each.
   *
   * @param wells filled in the large box, 8..64; the small one has eight
   */
  static Kit of(int paints, int wells) {
    List<Paint> shelf = new ArrayList<>();
    for (int i = 0; i < paints; i++) {
      shelf.add(paint(i));
    }
    Box large = box("large", (wells + COLUMNS - 1) / COLUMNS);
    Box small = box("small", 1);
    return Kit.empty("Large")
        .withShelf(new Shelf(shelf))
        .withBoxes(
            List.of(large, small),
            List.of(lineup("all", large, shelf, wells), lineup("few", small, shelf, COLUMNS)));
  }

  private static Paint paint(int number) {
    int kinds = BenchKit.LIBRARY.pigments().size();
    String first = code(number % kinds);
    String second = code((number + number / kinds) % kinds);
    String name = "Paint number " + (number + 1);
    return first.equals(second)
        ? BenchKit.paint("p" + number, name, Ownership.OWNED, first)
        : BenchKit.paint("p" + number, name, Ownership.OWNED, first, second);
  }

  private static String code(int number) {
    return BenchKit.LIBRARY.pigments().get(number).name().toString();
  }

  private static Box box(String id, int rows) {
    return BoxPlan.ofHalfPans(rows, COLUMNS, 0).box(id);
  }

  private static Lineup lineup(String id, Box box, List<Paint> shelf, int wells) {
    Map<String, Filling> fillings = new LinkedHashMap<>();
    for (int i = 0; i < wells; i++) {
      fillings.put(box.wells().get(i).id(), new Filling(shelf.get(i).id(), Fill.FULL));
    }
    return new Lineup(id, id, box.id(), fillings);
  }
}
