package org.panwright.analysis.mud;

import java.util.Arrays;
import org.panwright.analysis.reach.Net;

/** The darkest dry mix of a walk without each of some paints; one thread. */
public final class DarkestWithout implements Net.Sink {
  private final int[] members;
  private final DarkestMix[] without;

  /**
   * @param members the paints that may leave, by their number in the table
   */
  public DarkestWithout(int[] members) {
    this.members = members;
    without = new DarkestMix[members.length];
    Arrays.setAll(without, member -> new DarkestMix());
  }

  private DarkestWithout(DarkestWithout original) {
    members = original.members;
    without = Arrays.stream(original.without).map(DarkestMix::copy).toArray(DarkestMix[]::new);
  }

  /** The same so far, to be led on with other mixes. */
  public DarkestWithout copy() {
    return new DarkestWithout(this);
  }

  /** The darkest mix without one of the paints that may leave. */
  public DarkestMix without(int member) {
    return without[member];
  }

  @Override
  public void single(int paint, double[] colours) {
    for (int i = 0; i < members.length; i++) {
      if (members[i] != paint) {
        without[i].single(paint, colours);
      }
    }
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    for (int i = 0; i < members.length; i++) {
      if (members[i] != first && members[i] != second) {
        without[i].pair(first, second, colours);
      }
    }
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    for (int i = 0; i < members.length; i++) {
      if (members[i] != first && members[i] != second && members[i] != third) {
        without[i].triad(first, second, third, colours);
      }
    }
  }
}
