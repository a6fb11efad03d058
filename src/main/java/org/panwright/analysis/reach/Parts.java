package org.panwright.analysis.reach;

import java.util.ArrayList;
import java.util.List;

/**
 * Strength parts a painter can count out: whole numbers without a common divisor, at most {@value
 * #MOST} in all.
 *
 * @param first parts of the first paint, 1 or more
 * @param second parts of the second, 0 for none
 * @param third parts of the third, 0 for none
 */
public record Parts(int first, int second, int third) {
  /** The most parts of one recipe. */
  public static final int MOST = 7;

  /** One paint. */
  public static final List<Parts> ONE = List.of(new Parts(1, 0, 0));

  /** All parts of two paints: 17. */
  static final List<Parts> TWO = all(false);

  /** All parts of three paints: 34. */
  static final List<Parts> THREE = all(true);

  private static List<Parts> all(boolean three) {
    List<Parts> all = new ArrayList<>();
    for (int a = 1; a < MOST; a++) {
      for (int b = 1; a + b <= MOST; b++) {
        for (int c = three ? 1 : 0; c <= (three ? MOST - a - b : 0); c++) {
          if (divisor(a, divisor(b, c)) == 1) {
            all.add(new Parts(a, b, c));
          }
        }
      }
    }
    return List.copyOf(all);
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  /** The parts of the paint at a place, 0..2. */
  int of(int place) {
    return place == 0 ? first : place == 1 ? second : third;
  }
}
