package org.panwright.analysis.reach;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of the hue ring: {@code steps} steps upwards from {@code first}.
 *
 * @param first 0..71
 * @param steps 1..72
 */
public record HueArc(int first, int steps) {
  /** A lineup misses a step where it has less than this share of what the shelf has. */
  static final double SHARE = 0.65;

  /** A step counts where the shelf's chroma is at least this. */
  static final double WORTH_HAVING = 0.05;

  /** The fewest steps that make a gap: 15°. */
  static final int FEWEST = 3;

  /**
   * The arcs a lineup misses, given both rings after {@link #closed}.
   *
   * <pre>shelf(i) ≥ 0.05  and  lineup(i) &lt; 0.65 · shelf(i)   for at least three steps in a row
   * </pre>
   */
  public static List<HueArc> missing(double[] lineup, double[] shelf) {
    boolean[] missed = new boolean[Ring.STEPS];
    int start = -1;
    for (int step = 0; step < Ring.STEPS; step++) {
      missed[step] = shelf[step] >= WORTH_HAVING && lineup[step] < SHARE * shelf[step];
      if (!missed[step]) {
        start = step;
      }
    }
    if (start < 0) {
      return List.of(new HueArc(0, Ring.STEPS));
    }
    List<HueArc> arcs = new ArrayList<>();
    int run = 0;
    for (int i = 1; i <= Ring.STEPS; i++) {
      int step = (start + i) % Ring.STEPS;
      if (missed[step]) {
        run++;
      } else {
        if (run >= FEWEST) {
          arcs.add(new HueArc(Math.floorMod(step - run, Ring.STEPS), run));
        }
        run = 0;
      }
    }
    return arcs;
  }

  /**
   * A ring whose dips of one or two steps are filled to the lower of their walls, so that a hole of
   * the net is not taken for one of the palette.
   *
   * <pre>
   * d(i) = max(r(i−1), r(i), r(i+1)),   closed(i) = min(d(i−1), d(i), d(i+1))
   * </pre>
   */
  public static double[] closed(double[] ring) {
    double[] raised = new double[Ring.STEPS];
    double[] closed = new double[Ring.STEPS];
    for (int i = 0; i < Ring.STEPS; i++) {
      raised[i] = Math.max(ring[i], Math.max(at(ring, i - 1), at(ring, i + 1)));
    }
    for (int i = 0; i < Ring.STEPS; i++) {
      closed[i] = Math.min(raised[i], Math.min(at(raised, i - 1), at(raised, i + 1)));
    }
    return closed;
  }

  private static double at(double[] ring, int step) {
    return ring[Math.floorMod(step, Ring.STEPS)];
  }

  /** Where the arc starts in degrees: the lower edge of its first step. */
  public double fromDeg() {
    return org.panwright.colour.Hue.normal((first - 0.5) * Ring.STEP_DEG);
  }

  /** Where it ends in degrees: the upper edge of its last step. */
  public double toDeg() {
    return org.panwright.colour.Hue.normal((first + steps - 0.5) * Ring.STEP_DEG);
  }

  /** The highest value of a ring within the arc. */
  public double highest(double[] ring) {
    double highest = 0;
    for (int i = 0; i < steps; i++) {
      highest = Math.max(highest, at(ring, first + i));
    }
    return highest;
  }

  /**
   * The share of the missing chroma that {@code better} makes good, 0..1.
   *
   * <pre>Σ min(better, shelf) − lineup  /  Σ shelf − lineup   over the arc</pre>
   */
  public double closes(double[] lineup, double[] better, double[] shelf) {
    double missing = 0;
    double made = 0;
    for (int i = 0; i < steps; i++) {
      double has = at(lineup, first + i);
      double wanted = at(shelf, first + i);
      missing += wanted - has;
      made += Math.max(0, Math.min(at(better, first + i), wanted) - has);
    }
    return made / missing;
  }
}
