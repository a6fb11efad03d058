package org.panwright.analysis;

import java.util.BitSet;

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
  static final int CELLS = L_CELLS * AB_CELLS * AB_CELLS;

  private final BitSet cells;

  private Reach(BitSet cells) {
    this.cells = cells;
  }

  /** The cell of a colour; colours beyond L* 0..105, a* and b* −140..140 count as the outermost. */
  static int cell(double l, double a, double b) {
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

  /** The share of this reach that {@code other} covers, 0..1; 1 if there is nothing to cover. */
  public double coveredBy(Reach other) {
    if (cells.isEmpty()) {
      return 1;
    }
    BitSet common = (BitSet) cells.clone();
    common.and(other.cells);
    return (double) common.cardinality() / cells.cardinality();
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
  static final class Gatherer implements Net.Sink {
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

    Reach reach() {
      return new Reach((BitSet) cells.clone());
    }
  }
}
