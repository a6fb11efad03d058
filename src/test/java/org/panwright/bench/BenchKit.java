package org.panwright.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

/** A made-up kit of any size whose paints all differ; the same every time. */
final class BenchKit {
  static final String LINEUP = "lineup";

  private BenchKit() {}

  /** A shelf of {@code paints} paints and one box with a well for each of {@code wells} of them. */
  static Kit of(int paints, int wells) {
    List<Paint> shelf = new ArrayList<>();
    for (int i = 0; i < paints; i++) {
      shelf.add(paint("p" + i, optics(new Random(i))));
    }
    List<Well> places = new ArrayList<>();
    Map<String, Filling> fillings = new LinkedHashMap<>();
    for (int i = 0; i < wells; i++) {
      String id = "w" + i;
      places.add(
          new Well(id, Integer.toString(i + 1), WellKind.HALF_PAN, i % 8 * 20, i / 8 * 17, 19, 16));
      fillings.put(id, new Filling("p" + i, Fill.FULL));
    }
    Box box = new Box("box", "box", 200, 200, 200, 200, places);
    return Kit.empty("bench")
        .withShelf(new Shelf(shelf))
        .withBoxes(List.of(box), List.of(new Lineup(LINEUP, "lineup", "box", fillings)));
  }

  private static Paint paint(String id, Optics optics) {
    return new Paint(
        id,
        id,
        "",
        List.of(new PigmentShare(PigmentName.of("PB29"), 1)),
        new Handling(
            Transparency.TRANSPARENT, Staining.LOW, Granulation.NONE, Lightfastness.UNRATED),
        Ownership.OWNED,
        Optional.of(optics),
        "");
  }

  private static Optics optics(Random random) {
    double centre = 400 + 300 * random.nextDouble();
    double width = 20 + 80 * random.nextDouble();
    double depth = 2 + 10 * random.nextDouble();
    double scattering = Math.pow(10, -2 + 2 * random.nextDouble());
    return new Optics(
        Spectrum.ofWavelengths(
            nm -> depth * Math.exp(-(nm - centre) * (nm - centre) / (width * width)) + 0.01),
        Spectrum.flat(scattering),
        OpticsSource.SPECTRA,
        5);
  }
}
