package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.List;
import org.panwright.swatch.picture.Point;

/**
 * A connected dark place in a small grey picture.
 *
 * <p>For a solid parallelogram of area A, however it lies, the covariance of its points satisfies
 *
 * <pre>solidity = 12 √det(cov) / A = 1</pre>
 *
 * <p>because that of a unit square is I/12 and both sides change alike under an affine map. For a
 * square of side s with a hollow of side h it is (s² + h²) / (s² − h²).
 *
 * @param area in pixels of the small picture
 * @param middle of its points, in pixels of the small picture
 * @param solidity as above
 * @param slimness the ratio of its longer to its shorter extent, 1 or more
 */
record Blot(double area, Point middle, double solidity, double slimness) {

  /** All of them with at least {@code least} pixels and at most {@code most}. */
  static List<Blot> in(SmallGrey picture, int least, int most) {
    boolean[] seen = new boolean[picture.width * picture.height];
    int[] stack = new int[seen.length];
    List<Blot> blots = new ArrayList<>();
    for (int start = 0; start < seen.length; start++) {
      if (picture.isDark(start) && !seen[start]) {
        Moments moments = gather(picture, seen, stack, start);
        if (moments.count >= least && moments.count <= most) {
          blots.add(moments.blot());
        }
      }
    }
    return blots;
  }

  private static Moments gather(SmallGrey picture, boolean[] seen, int[] stack, int start) {
    Moments moments = new Moments();
    int depth = 0;
    stack[depth++] = start;
    seen[start] = true;
    while (depth > 0) {
      int at = stack[--depth];
      int x = at % picture.width;
      int y = at / picture.width;
      moments.add(x, y);
      if (x > 0) {
        depth = push(picture, seen, stack, depth, at - 1);
      }
      if (x + 1 < picture.width) {
        depth = push(picture, seen, stack, depth, at + 1);
      }
      if (y > 0) {
        depth = push(picture, seen, stack, depth, at - picture.width);
      }
      if (y + 1 < picture.height) {
        depth = push(picture, seen, stack, depth, at + picture.width);
      }
    }
    return moments;
  }

  private static int push(SmallGrey picture, boolean[] seen, int[] stack, int depth, int at) {
    if (seen[at] || !picture.isDark(at)) {
      return depth;
    }
    seen[at] = true;
    stack[depth] = at;
    return depth + 1;
  }

  private static final class Moments {
    long count;
    double x;
    double y;
    double xx;
    double yy;
    double xy;

    void add(int px, int py) {
      count++;
      x += px;
      y += py;
      xx += (double) px * px;
      yy += (double) py * py;
      xy += (double) px * py;
    }

    /** A pixel is a small square itself, of variance 1/12 each way. */
    Blot blot() {
      double mx = x / count;
      double my = y / count;
      double a = xx / count - mx * mx + 1.0 / 12;
      double d = yy / count - my * my + 1.0 / 12;
      double b = xy / count - mx * my;
      double det = Math.max(0, a * d - b * b);
      double half = (a + d) / 2;
      double root = Math.sqrt(Math.max(0, half * half - det));
      double slimness = Math.sqrt((half + root) / Math.max(1e-9, half - root));
      return new Blot(count, new Point(mx + 0.5, my + 0.5), 12 * Math.sqrt(det) / count, slimness);
    }
  }
}
