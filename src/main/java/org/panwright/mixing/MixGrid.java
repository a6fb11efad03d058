package org.panwright.mixing;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * All pairs of some paints in every {@link Ratio#GRID} and every wash, as dry CIELAB colours under
 * D65.
 *
 * <p>Rows and columns are counted in the order of the paints given. Immutable once made.
 */
public final class MixGrid {
  private static final int RATIOS = Ratio.GRID.size();
  private static final int WASHES = Wash.values().length;
  private static final int BLOCK = RATIOS * WASHES * 3;

  private final int[] paints;
  private final double[] lab;

  private MixGrid(int[] paints, double[] lab) {
    this.paints = paints;
    this.lab = lab;
  }

  /**
   * The grid of the table's paints whose numbers are given.
   *
   * @param cancelled asked once a row
   * @throws CancellationException as soon as {@code cancelled} answers true
   */
  public static MixGrid of(
      OpticsTable table, int[] paints, WashStrengths washes, BooleanSupplier cancelled) {
    int size = paints.length;
    double[] lab = new double[size * (size + 1) / 2 * BLOCK];
    BatchMixer mixer = new BatchMixer(table, Light.D65);
    double[] loads = washes.loads().stream().mapToDouble(Double::doubleValue).toArray();
    for (int row = 0; row < size; row++) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException("mix grid no longer wanted");
      }
      for (int column = row; column < size; column++) {
        int at = cell(size, row, column);
        for (Ratio ratio : Ratio.GRID) {
          stir(mixer, table, paints[row], paints[column], ratio);
          for (double load : loads) {
            mixer.writeLab(load, lab, at);
            at += 3;
          }
        }
      }
    }
    return new MixGrid(paints.clone(), lab);
  }

  /** The grid of some of these paints, by their rows, in the order given. */
  public MixGrid select(int... rows) {
    int[] chosen = new int[rows.length];
    double[] copied = new double[rows.length * (rows.length + 1) / 2 * BLOCK];
    for (int row = 0; row < rows.length; row++) {
      chosen[row] = paints[rows[row]];
      for (int column = row; column < rows.length; column++) {
        int to = cell(rows.length, row, column);
        if (rows[row] <= rows[column]) {
          System.arraycopy(lab, cell(size(), rows[row], rows[column]), copied, to, BLOCK);
        } else {
          int from = cell(size(), rows[column], rows[row]);
          for (int ratio = 0; ratio < RATIOS; ratio++) {
            int turned = RATIOS - 1 - ratio;
            System.arraycopy(
                lab, from + turned * WASHES * 3, copied, to + ratio * WASHES * 3, WASHES * 3);
          }
        }
      }
    }
    return new MixGrid(chosen, copied);
  }

  /** Fills the mixer with a coat of load 1 whose volumes follow the strength parts. */
  private static void stir(
      BatchMixer mixer, OpticsTable table, int first, int second, Ratio ratio) {
    double firstVolume = ratio.first() * table.tintLoad(first);
    double secondVolume = ratio.second() * table.tintLoad(second);
    double total = firstVolume + secondVolume;
    mixer.clear();
    mixer.add(first, firstVolume / total);
    mixer.add(second, secondVolume / total);
  }

  /** How many paints. */
  public int size() {
    return paints.length;
  }

  /** The number in the optics table of the paint of a row (or column). */
  public int paint(int row) {
    return paints[row];
  }

  /**
   * The colour of row paint and column paint mixed.
   *
   * @param ratio place in {@link Ratio#GRID}; {@code first} belongs to the row paint
   */
  public Lab lab(int row, int column, int ratio, Wash wash) {
    boolean stored = row <= column;
    int block = stored ? cell(size(), row, column) : cell(size(), column, row);
    int turned = stored ? ratio : RATIOS - 1 - ratio;
    int at = block + (turned * WASHES + wash.ordinal()) * 3;
    return new Lab(lab[at], lab[at + 1], lab[at + 2]);
  }

  /** The start of a pair's block, row ≤ column, in the upper triangle stored row by row. */
  private static int cell(int size, int row, int column) {
    return (row * size - row * (row - 1) / 2 + column - row) * BLOCK;
  }
}
