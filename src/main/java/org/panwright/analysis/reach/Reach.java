package org.panwright.analysis.reach;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;

/**
 * All colours some paints can mix, counted as occupied cells of CIELAB with edges of 5.
 *
 * <p>Counted on the fixed net of mixes that {@code docs/numbers.md} describes. Two colours in one
 * cell are at most 8.7 ΔE*ab apart, on average about 3.3: near enough to call one colour in a wash.
 */
public final class Reach {
  /** The edge of a cell in units of L*, a* and b*. */
  public static final double EDGE = 5;

  private static final int L_CELLS = 21;
  private static final int AB_CELLS = 56;
  private static final double AB_FROM = -140;

  /** How many cells there are. */
  public static final int CELLS = L_CELLS * AB_CELLS * AB_CELLS;

  private final BitSet cells;

  private Reach(BitSet cells) {
    this.cells = cells;
  }

  /** The cell of a colour; colours beyond L* 0..105, a* and b* −140..140 count as the outermost. */
  public static int cell(double l, double a, double b) {
    int lCell = clamp((int) (l / EDGE), L_CELLS);
    int aCell = clamp((int) ((a - AB_FROM) / EDGE), AB_CELLS);
    int bCell = clamp((int) ((b - AB_FROM) / EDGE), AB_CELLS);
    return (lCell * AB_CELLS + aCell) * AB_CELLS + bCell;
  }

  private static int clamp(int cell, int count) {
    return Math.max(0, Math.min(count - 1, cell));
  }

  /** How many cells are occupied. */
  public int size() {
    return cells.cardinality();
  }

  /**
   * The share of this reach that {@code other} covers, 0..1; 1 if there is nothing to cover.
   *
   * <p>A cell is covered if the other occupies it or one that shares a face with it: the net does
   * not fill a reach evenly, and a hole of the net is no missing colour.
   */
  public double coveredBy(Reach other) {
    return cells.isEmpty() ? 1 : 1 - (double) beyond(other).cardinality() / size();
  }

  /**
   * Colours of this reach that {@code other} does not cover, as far from each other as may be.
   *
   * <p>The first is the one farthest from L* 50 grey, each further one the farthest from those
   * before.
   *
   * @return cell centres, CIELAB under D65, at most {@code most}
   */
  public List<Lab> samplesBeyond(Reach other, int most) {
    List<Lab> centres = beyond(other).stream().mapToObj(Reach::centre).toList();
    List<Lab> samples = new ArrayList<>();
    double[] nearest = new double[centres.size()];
    for (int i = 0; i < nearest.length; i++) {
      nearest[i] = Difference.ab(centres.get(i), new Lab(50, 0, 0));
    }
    while (samples.size() < Math.min(most, centres.size())) {
      int farthest = 0;
      for (int i = 1; i < nearest.length; i++) {
        if (nearest[i] > nearest[farthest]) {
          farthest = i;
        }
      }
      Lab sample = centres.get(farthest);
      for (int i = 0; i < nearest.length; i++) {
        double away = Difference.ab(centres.get(i), sample);
        nearest[i] = samples.isEmpty() ? away : Math.min(nearest[i], away);
      }
      samples.add(sample);
    }
    return samples;
  }

  /** The cells that {@code other} does not cover. */
  private BitSet beyond(Reach other) {
    BitSet beyond = (BitSet) cells.clone();
    beyond.andNot(other.cells);
    for (int cell = beyond.nextSetBit(0); cell >= 0; cell = beyond.nextSetBit(cell + 1)) {
      if (other.besides(cell)) {
        beyond.clear(cell);
      }
    }
    return beyond;
  }

  /** Whether a cell that shares a face with this one is occupied. */
  private boolean besides(int cell) {
    int b = cell % AB_CELLS;
    int a = cell / AB_CELLS % AB_CELLS;
    int plane = AB_CELLS * AB_CELLS;
    return (b > 0 && cells.get(cell - 1))
        || (b < AB_CELLS - 1 && cells.get(cell + 1))
        || (a > 0 && cells.get(cell - AB_CELLS))
        || (a < AB_CELLS - 1 && cells.get(cell + AB_CELLS))
        || (cell >= plane && cells.get(cell - plane))
        || cells.get(cell + plane);
  }

  private static Lab centre(int cell) {
    int l = cell / (AB_CELLS * AB_CELLS);
    int a = cell / AB_CELLS % AB_CELLS;
    int b = cell % AB_CELLS;
    return new Lab((l + 0.5) * EDGE, AB_FROM + (a + 0.5) * EDGE, AB_FROM + (b + 0.5) * EDGE);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reach that && cells.equals(that.cells);
  }

  @Override
  public int hashCode() {
    return cells.hashCode();
  }

  /** Gathers mixes into a reach; one thread. */
  public static final class Gatherer implements Net.Sink {
    private final BitSet cells = new BitSet(CELLS);

    @Override
    public void single(int paint, double[] colours) {
      mark(colours, 1);
    }

    @Override
    public void pair(int first, int second, double[] colours) {
      mark(colours, Net.PATH);
    }

    @Override
    public void triad(int first, int second, int third, double[] colours) {
      mark(colours, Net.TRIADS.size());
    }

    private void mark(double[] colours, int mixes) {
      for (int at = 0; at < mixes * Net.MIX; at += Net.COLOUR) {
        cells.set(cell(colours[at], colours[at + 1], colours[at + 2]));
      }
    }

    /** The reach of all that was gathered so far. */
    public Reach reach() {
      return new Reach((BitSet) cells.clone());
    }
  }
}
