package org.panwright.analysis.worth;

import java.util.Arrays;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.reach.RingTracer;

/**
 * Ring and reach of a lineup without each of its paints, gathered in one walk over its net; one
 * thread.
 *
 * <p>The ring is kept once for each paint that may leave; a mix raises those of the paints it does
 * not hold. For the reach each cell keeps which paints are in <i>every</i> mix that falls there:
 * the cell is lost when one of those leaves.
 */
public final class LeaveOneOut extends RingTracer {
  private static final int UNOCCUPIED = -1;
  private static final int BITS = 10;
  private static final int TWICE = 2 * BITS;
  private static final int MASK = (1 << BITS) - 1;

  private final int[] members;
  private final int[] codes;
  private final double[] rings;
  private final double[] lowest = new double[Ring.STEPS];
  private final int[] holders;
  private int occupied;
  private int firstCode;
  private int secondCode;
  private int thirdCode;

  /**
   * @param members the paints that may leave, by their number in a table of {@code tableSize}, at
   *     most 1023; other paints of a walk always stay
   */
  LeaveOneOut(int[] members, int tableSize) {
    if (members.length > MASK) {
      throw new IllegalArgumentException("too many paints in a lineup: " + members.length);
    }
    this.members = members;
    codes = new int[tableSize];
    for (int i = 0; i < members.length; i++) {
      codes[members[i]] = i + 1;
    }
    rings = new double[members.length * Ring.STEPS];
    holders = new int[Reach.CELLS];
    Arrays.fill(holders, UNOCCUPIED);
  }

  private LeaveOneOut(LeaveOneOut original) {
    members = original.members;
    codes = original.codes;
    rings = original.rings.clone();
    System.arraycopy(original.lowest, 0, lowest, 0, Ring.STEPS);
    holders = original.holders.clone();
    occupied = original.occupied;
  }

  /** The same so far, to be led on with other mixes. */
  public LeaveOneOut copy() {
    return new LeaveOneOut(this);
  }

  /** The sum of the ring's chromas without one of the paints that may leave. */
  public double ringSumWithout(int member) {
    double sum = 0;
    for (int step = 0; step < Ring.STEPS; step++) {
      sum += rings[member * Ring.STEPS + step];
    }
    return sum;
  }

  /** The ring's chromas without one of the paints that may leave. */
  public double[] ringWithout(int member) {
    return Arrays.copyOfRange(rings, member * Ring.STEPS, (member + 1) * Ring.STEPS);
  }

  /** How many cells of the reach are occupied while all are there. */
  public int reach() {
    return occupied;
  }

  /** For each place of {@code members}, how many cells of the reach that paint takes with it. */
  public int[] reachLost() {
    int[] lost = new int[members.length + 1];
    for (int held : holders) {
      if (held > 0) {
        count(lost, held & MASK);
        count(lost, (held >> BITS) & MASK);
        count(lost, held >> TWICE);
      }
    }
    return Arrays.copyOfRange(lost, 1, lost.length);
  }

  private static void count(int[] lost, int code) {
    if (code != 0) {
      lost[code]++;
    }
  }

  @Override
  public void single(int paint, double[] colours) {
    hold(codes[paint], 0, 0);
    super.single(paint, colours);
    mark(colours, 1);
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    hold(codes[first], codes[second], 0);
    super.pair(first, second, colours);
    mark(colours, Net.PATH);
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    hold(codes[first], codes[second], codes[third]);
    super.triad(first, second, third, colours);
    mark(colours, Net.TRIADS.size());
  }

  @Override
  protected void raise(int step, double l, double c) {
    if (c <= lowest[step]) {
      return;
    }
    double low = Double.POSITIVE_INFINITY;
    for (int member = 0; member < members.length; member++) {
      int code = member + 1;
      int at = member * Ring.STEPS + step;
      if (rings[at] < c && code != firstCode && code != secondCode && code != thirdCode) {
        rings[at] = c;
      }
      low = Math.min(low, rings[at]);
    }
    lowest[step] = low;
  }

  private void hold(int first, int second, int third) {
    firstCode = first;
    secondCode = second;
    thirdCode = third;
  }

  private void mark(double[] colours, int mixes) {
    int mine = firstCode | (secondCode << BITS) | (thirdCode << TWICE);
    for (int at = 0; at < mixes * Net.MIX; at += Net.COLOUR) {
      int cell = Reach.cell(colours[at], colours[at + 1], colours[at + 2]);
      int held = holders[cell];
      if (held == UNOCCUPIED) {
        holders[cell] = mine;
        occupied++;
      } else if (held != 0) {
        holders[cell] = common(held);
      }
    }
  }

  /** Those of the held codes that the mix at hand holds too. */
  private int common(int held) {
    return kept(held & MASK)
        | (kept((held >> BITS) & MASK) << BITS)
        | (kept(held >> TWICE) << TWICE);
  }

  private int kept(int code) {
    return code == firstCode || code == secondCode || code == thirdCode ? code : 0;
  }
}
