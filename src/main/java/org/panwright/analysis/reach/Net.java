package org.panwright.analysis.reach;

import java.util.List;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;

/**
 * The fixed net of mixes on which ring, reach and all that follows from them are counted.
 *
 * <ul>
 *   <li>every paint alone,
 *   <li>every pair in the seven {@link Ratio#GRID} parts,
 *   <li>every three paints in the four {@link #TRIADS} parts,
 * </ul>
 *
 * <p>each in all five washes, as dried coats on the kit's paper under D65. Parts are strength
 * parts. The net is the same for a lineup, a shelf and a trial exchange, so the figures compare. n
 * paints make 5 n + 35 n (n − 1) / 2 + 20 n (n − 1)(n − 2) / 6 coats: 6 770 for 12 paints, 29 550
 * for 20.
 */
public final class Net {
  /** Parts of three paints. */
  public record Triad(int first, int second, int third) {}

  /** All three alike, then each of them leading. */
  public static final List<Triad> TRIADS =
      List.of(new Triad(1, 1, 1), new Triad(2, 1, 1), new Triad(1, 2, 1), new Triad(1, 1, 2));

  /** Washes of each mix. */
  public static final int WASHES = Wash.values().length;

  /** Points of a pair's path: the first paint alone, its mixes, the second alone. */
  public static final int PATH = Ratio.GRID.size() + 2;

  /** Doubles kept for a colour: L*, a*, b* of CIELAB, then L, a, b of Oklab. */
  public static final int COLOUR = 6;

  /** Doubles from one mix to the next in a sink's array. */
  public static final int MIX = WASHES * COLOUR;

  private Net() {}

  /** How many coats the net of {@code paints} paints has. */
  static long coats(int paints) {
    long n = paints;
    return WASHES
        * (n + Ratio.GRID.size() * (n * (n - 1) / 2) + TRIADS.size() * (n * (n - 1) * (n - 2) / 6));
  }

  /**
   * Takes in the colours of a walk over the net.
   *
   * <p>Paints are numbers of the optics table. The array is the walker's own and changes after the
   * call; the colour of mix {@code m} in wash {@code w} starts at {@code m · MIX + w · COLOUR}.
   */
  public interface Sink {
    /** One paint alone: one mix. */
    void single(int paint, double[] colours);

    /**
     * A pair: {@link #PATH} mixes from the first paint alone to the second alone. The two ends have
     * been or will be given to {@link #single} as well.
     */
    void pair(int first, int second, double[] colours);

    /** Three paints: one mix for each of {@link #TRIADS}. */
    void triad(int first, int second, int third, double[] colours);
  }
}
