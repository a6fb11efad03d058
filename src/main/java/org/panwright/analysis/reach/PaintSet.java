package org.panwright.analysis.reach;

import java.util.ArrayList;
import java.util.List;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;

/**
 * One, two or three paints of a table that go into one mix.
 *
 * @param first the number of the first paint
 * @param second of the second, {@value #NONE} for none
 * @param third of the third, {@value #NONE} for none
 */
public record PaintSet(int first, int second, int third) {
  /** The number that stands for no paint. */
  public static final int NONE = -1;

  /** How many paints. */
  public int size() {
    return second == NONE ? 1 : third == NONE ? 2 : 3;
  }

  int paint(int place) {
    return place == 0 ? first : place == 1 ? second : third;
  }

  /** Whether a paint is one of them. */
  public boolean holds(int paint) {
    return first == paint || second == paint || third == paint;
  }

  /** Whether all paints of {@code other} are here. */
  public boolean holdsAll(PaintSet other) {
    for (int place = 0; place < other.size(); place++) {
      if (!holds(other.paint(place))) {
        return false;
      }
    }
    return true;
  }

  /** All whole parts for this many paints. */
  public List<Parts> parts() {
    return switch (size()) {
      case 1 -> Parts.ONE;
      case 2 -> Parts.TWO;
      default -> Parts.THREE;
    };
  }

  /**
   * Fills a mixer with a coat of load 1 of these paints in strength parts.
   *
   * @return the load at which the mix is one strength part:
   *     <pre>Σ partsᵢ tintLoadᵢ / Σ partsᵢ</pre>
   */
  public double stir(BatchMixer mixer, OpticsTable table, Parts parts) {
    double total = 0;
    int count = 0;
    for (int place = 0; place < size(); place++) {
      total += parts.of(place) * table.tintLoad(paint(place));
      count += parts.of(place);
    }
    mixer.clear();
    for (int place = 0; place < size(); place++) {
      mixer.add(paint(place), parts.of(place) * table.tintLoad(paint(place)) / total);
    }
    return total / count;
  }

  /** The recipe of these paints in some strength parts. */
  public Recipe recipe(OpticsTable table, Parts parts) {
    List<Portion> portions = new ArrayList<>();
    for (int place = 0; place < size(); place++) {
      portions.add(new Portion(table.ids().get(paint(place)), parts.of(place)));
    }
    return new Recipe(portions);
  }
}
