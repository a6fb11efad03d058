package org.panwright.analysis.reach;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.panwright.colour.Lab;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * A few paints that stand for a very large shelf, so that its mixes of three can be counted.
 *
 * <p>They are chosen to lie far apart: each next one is the paint whose masstone and milk wash,
 * taken as one point of six CIELAB coordinates, lie furthest from all chosen so far (Gonzalez,
 * Clustering to minimize the maximum intercluster distance, Theoretical Computer Science 38, 1985,
 * pp. 293–306). The first is the one furthest from the middle of all. Of equals the first on the
 * shelf counts.
 */
public final class Representatives {
  /** A shelf up to this size stands for itself. */
  public static final int MOST = 48;

  private static final int COORDINATES = 6;

  private Representatives() {}

  /**
   * The paints that stand for others, in the order given.
   *
   * @param paintIds paints of the table
   */
  public static List<String> of(OpticsTable table, WashStrengths washes, List<String> paintIds) {
    if (paintIds.size() <= MOST) {
      return paintIds;
    }
    Mixer mixer = new Mixer(table);
    double[][] points = new double[paintIds.size()][];
    for (int i = 0; i < points.length; i++) {
      points[i] = point(mixer, washes, paintIds.get(i));
    }
    boolean[] chosen = farApart(points, MOST);
    List<String> standing = new ArrayList<>();
    for (int i = 0; i < chosen.length; i++) {
      if (chosen[i]) {
        standing.add(paintIds.get(i));
      }
    }
    return standing;
  }

  /** Marks {@code count} points, each the furthest from those marked before it. */
  static boolean[] farApart(double[][] points, int count) {
    boolean[] chosen = new boolean[points.length];
    double[] distance = new double[points.length];
    double[] middle = middle(points);
    for (int i = 0; i < points.length; i++) {
      distance[i] = squared(points[i], middle);
    }
    int next = furthest(distance);
    Arrays.fill(distance, Double.POSITIVE_INFINITY);
    for (int n = 0; n < Math.min(count, points.length); n++) {
      chosen[next] = true;
      for (int i = 0; i < points.length; i++) {
        double apart = chosen[i] ? -1 : squared(points[i], points[next]);
        distance[i] = Math.min(distance[i], apart);
      }
      next = furthest(distance);
    }
    return chosen;
  }

  private static double[] point(Mixer mixer, WashStrengths washes, String paintId) {
    Lab masstone = mixer.lab(Recipe.of(paintId), washes.load(Wash.BUTTER));
    Lab wash = mixer.lab(Recipe.of(paintId), washes.load(Wash.MILK));
    return new double[] {masstone.l(), masstone.a(), masstone.b(), wash.l(), wash.a(), wash.b()};
  }

  private static double[] middle(double[][] points) {
    double[] sum = new double[points.length == 0 ? COORDINATES : points[0].length];
    for (double[] point : points) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += point[i] / points.length;
      }
    }
    return sum;
  }

  private static int furthest(double[] distance) {
    int best = 0;
    for (int i = 1; i < distance.length; i++) {
      if (distance[i] > distance[best]) {
        best = i;
      }
    }
    return best;
  }

  private static double squared(double[] first, double[] second) {
    double sum = 0;
    for (int i = 0; i < first.length; i++) {
      sum += (first[i] - second[i]) * (first[i] - second[i]);
    }
    return sum;
  }
}
