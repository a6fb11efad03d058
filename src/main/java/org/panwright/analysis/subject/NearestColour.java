package org.panwright.analysis.subject;

/**
 * Finds the nearest of many colours: a balanced k-d tree over Oklab (Bentley, Communications of the
 * ACM 18, 1975), laid flat.
 *
 * <pre>d² = ΔL² + (2 Δa)² + (2 Δb)²</pre>
 *
 * <p>a and b count double: near the neutrals a step in them is seen two to three times as strongly
 * as the same step in L. Immutable; any thread.
 */
final class NearestColour {
  private static final float AB_WEIGHT = 2;

  private final float[] points;

  /**
   * @param oklab L, a, b of each colour one after the other; at least one; not kept
   */
  NearestColour(float[] oklab) {
    points = oklab.clone();
    for (int i = 0; i < points.length; i++) {
      points[i] *= i % 3 == 0 ? 1 : AB_WEIGHT;
    }
    build(0, points.length / 3, 0);
  }

  /** How many colours. */
  int size() {
    return points.length / 3;
  }

  /** Oklab L of a colour by number. */
  double l(int colour) {
    return points[3 * colour];
  }

  /** Oklab a of a colour by number. */
  double a(int colour) {
    return points[3 * colour + 1] / AB_WEIGHT;
  }

  /** Oklab b of a colour by number. */
  double b(int colour) {
    return points[3 * colour + 2] / AB_WEIGHT;
  }

  /** The number of the colour nearest to one. */
  int nearest(double l, double a, double b) {
    Search search = new Search((float) l, (float) a * AB_WEIGHT, (float) b * AB_WEIGHT);
    search.within(0, size(), 0);
    return search.best;
  }

  /**
   * The point in the middle of a stretch parts the others by one coordinate, the next by another.
   */
  private void build(int from, int to, int axis) {
    if (to - from < 2) {
      return;
    }
    int middle = (from + to) >>> 1;
    select(from, to - 1, middle, axis);
    int next = (axis + 1) % 3;
    build(from, middle, next);
    build(middle + 1, to, next);
  }

  /** Hoare's selection: the {@code wanted}th by a coordinate gets to its place. */
  private void select(int first, int last, int wanted, int axis) {
    int low = first;
    int high = last;
    while (low < high) {
      float pivot = points[3 * ((low + high) >>> 1) + axis];
      int i = low;
      int j = high;
      while (i <= j) {
        while (points[3 * i + axis] < pivot) {
          i++;
        }
        while (points[3 * j + axis] > pivot) {
          j--;
        }
        if (i <= j) {
          swap(i++, j--);
        }
      }
      if (wanted <= j) {
        high = j;
      } else if (wanted >= i) {
        low = i;
      } else {
        return;
      }
    }
  }

  private void swap(int one, int other) {
    for (int c = 0; c < 3; c++) {
      float kept = points[3 * one + c];
      points[3 * one + c] = points[3 * other + c];
      points[3 * other + c] = kept;
    }
  }

  private final class Search {
    private final float[] target;
    private float least = Float.POSITIVE_INFINITY;
    private int best = -1;

    Search(float... target) {
      this.target = target;
    }

    void within(int from, int to, int axis) {
      if (from >= to) {
        return;
      }
      int middle = (from + to) >>> 1;
      int at = 3 * middle;
      float x = points[at] - target[0];
      float y = points[at + 1] - target[1];
      float z = points[at + 2] - target[2];
      float squared = x * x + y * y + z * z;
      if (squared < least) {
        least = squared;
        best = middle;
      }
      float beyond = target[axis] - points[at + axis];
      int next = (axis + 1) % 3;
      if (beyond < 0) {
        within(from, middle, next);
        if (beyond * beyond < least) {
          within(middle + 1, to, next);
        }
      } else {
        within(middle + 1, to, next);
        if (beyond * beyond < least) {
          within(from, middle, next);
        }
      }
    }
  }
}
