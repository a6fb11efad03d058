package org.panwright.analysis.subject;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.PaintSet;
import org.panwright.analysis.reach.Parts;
import org.panwright.analysis.reach.QuickColour;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.mixing.BatchMixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * The colours some paints can mix, as points of Oklab that lie close together: the mixes of the
 * {@link Net} in {@value #LOADS} loads instead of five, and the bare paper.
 *
 * <p>Loads lie evenly in the logarithm from the strongest wash to half the thinnest. Of the colours
 * in one cell of {@value #L_EDGE} in L and {@value #AB_EDGE} in a and b only the first is kept:
 * that bounds the memory by the space of colours, not by the number of mixes: 12 bytes a colour;
 * all 99 pigments of the library together make 62 000 colours, 0.7 MB.
 */
final class ReachCloud {
  static final double L_EDGE = 0.0125;
  static final double AB_EDGE = 0.00625;
  private static final int LOADS = 20;
  private static final int L_CELLS = 88;
  private static final int AB_CELLS = 144;

  private final OpticsTable table;
  private final BatchMixer mixer;
  private final double[] loads = new double[LOADS];
  private final double[] colour = new double[Net.COLOUR];
  private final BitSet cells = new BitSet(L_CELLS * AB_CELLS * AB_CELLS);
  private float[] kept = new float[3 * 1024];
  private int end;

  private ReachCloud(OpticsTable table, WashStrengths washes) {
    this.table = table;
    mixer = new BatchMixer(table, Light.D65);
    double strongest = Math.log(washes.load(Wash.BUTTER));
    double thinnest = Math.log(washes.load(Wash.TEA) / 2);
    for (int i = 0; i < LOADS; i++) {
      loads[i] = Math.exp(strongest + (thinnest - strongest) * i / (LOADS - 1));
    }
  }

  /**
   * L, a, b of the colours, one after the other.
   *
   * @param cancelled asked once for each pair
   * @throws CancellationException as soon as {@code cancelled} answers true
   */
  static float[] of(
      OpticsTable table, List<String> paintIds, WashStrengths washes, BooleanSupplier cancelled) {
    ReachCloud cloud = new ReachCloud(table, washes);
    Oklab paper = Oklab.ofD65(Light.D65.xyz(table.paper().reflectance()));
    cloud.keep(paper.l(), paper.a(), paper.b());
    cloud.mixAll(table.indicesOf(paintIds), cancelled);
    return Arrays.copyOf(cloud.kept, cloud.end);
  }

  private void mixAll(int[] paints, BooleanSupplier cancelled) {
    boolean three = paints.length <= Recipes.MOST_FOR_THREE;
    for (int i = 0; i < paints.length; i++) {
      add(new PaintSet(paints[i], PaintSet.NONE, PaintSet.NONE), Parts.ONE);
      for (int j = i + 1; j < paints.length; j++) {
        if (cancelled.getAsBoolean()) {
          throw new CancellationException("colours no longer wanted");
        }
        add(new PaintSet(paints[i], paints[j], PaintSet.NONE), PAIRS);
        for (int k = j + 1; three && k < paints.length; k++) {
          add(new PaintSet(paints[i], paints[j], paints[k]), TRIADS);
        }
      }
    }
  }

  private static final List<Parts> PAIRS =
      Ratio.GRID.stream().map(r -> new Parts(r.first(), r.second(), 0)).toList();
  private static final List<Parts> TRIADS =
      Net.TRIADS.stream().map(t -> new Parts(t.first(), t.second(), t.third())).toList();

  private void add(PaintSet set, List<Parts> all) {
    for (Parts parts : all) {
      set.stir(mixer, table, parts);
      for (double load : loads) {
        mixer.writeXyz(load, colour, 0);
        QuickColour.convert(colour, 0);
        keep(colour[3], colour[4], colour[5]);
      }
    }
  }

  private void keep(double l, double a, double b) {
    int cell =
        (cell(l / L_EDGE, L_CELLS) * AB_CELLS + cell(a / AB_EDGE + AB_CELLS / 2.0, AB_CELLS))
                * AB_CELLS
            + cell(b / AB_EDGE + AB_CELLS / 2.0, AB_CELLS);
    if (cells.get(cell)) {
      return;
    }
    cells.set(cell);
    if (end == kept.length) {
      kept = Arrays.copyOf(kept, 2 * end);
    }
    kept[end++] = (float) l;
    kept[end++] = (float) a;
    kept[end++] = (float) b;
  }

  private static int cell(double place, int count) {
    return Math.max(0, Math.min(count - 1, (int) Math.floor(place)));
  }
}
