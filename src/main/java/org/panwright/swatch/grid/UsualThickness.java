package org.panwright.swatch.grid;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.panwright.paint.Wash;

/**
 * How thickly the agreeing cells of a chart were laid, for those that disagree.
 *
 * <pre>
 * load = meant load of the wash · median (load / meant load) over the agreeing cells of that wash
 * </pre>
 *
 * <p>Where a wash has no agreeing cell the median is that of all; where none agrees at all, the
 * meant load stands. Worked: cells meant as 0.25 and laid at 0.20, 0.25 and 0.35 have the ratios
 * 0.8, 1 and 1.4, so a wrong cell of the same wash is foretold at 0.25.
 */
final class UsualThickness {
  private final CellLaw law;
  private final Map<Wash, List<Double>> ratios = new EnumMap<>(Wash.class);
  private final List<Double> all = new ArrayList<>();

  private UsualThickness(CellLaw law) {
    this.law = law;
  }

  static UsualThickness of(
      List<CellReading> cells, List<CellLaw.Foretold> foretold, boolean[] aside, CellLaw law) {
    UsualThickness usual = new UsualThickness(law);
    for (int i = 0; i < cells.size(); i++) {
      if (!aside[i] && !cells.get(i).patch().isBeyondPicture()) {
        Wash wash = cells.get(i).content().wash();
        double ratio = foretold.get(i).load() / law.meantLoad(wash);
        usual.ratios.computeIfAbsent(wash, unused -> new ArrayList<>()).add(ratio);
        usual.all.add(ratio);
      }
    }
    return usual;
  }

  /** All paint per area in a usual cell of a wash. */
  double load(Wash wash) {
    return law.meantLoad(wash) * median(ratios.getOrDefault(wash, all));
  }

  /** The upper one of the two in the middle where their number is even; 1 of none. */
  private static double median(List<Double> ratios) {
    List<Double> sorted = ratios.stream().sorted().toList();
    return sorted.isEmpty() ? 1 : sorted.get(sorted.size() / 2);
  }
}
