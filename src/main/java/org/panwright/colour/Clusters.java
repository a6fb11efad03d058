package org.panwright.colour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A handful of colours that stand for many: k-means in Oklab.
 *
 * <p>Seeds are drawn by k-means++ (Arthur and Vassilvitskii, SODA 2007: each next seed with a
 * probability proportional to the squared distance from those before), from a fixed random seed, so
 * the same colours give the same clusters. Then colours go to their nearest centre and centres to
 * the mean of theirs, until nothing moves or {@value #ROUNDS} rounds are over.
 */
public final class Clusters {
  private static final int ROUNDS = 40;
  private static final long SEED = 20_070_107;

  private Clusters() {}

  /**
   * One cluster.
   *
   * @param centre the mean of its colours
   * @param share of all colours that are nearest to it, above 0 and up to 1
   */
  public record Cluster(Oklab centre, double share) {}

  /**
   * At most {@code most} clusters, the largest first; fewer if there are fewer different colours.
   *
   * @param colours at least one
   * @param most 1 or more
   */
  public static List<Cluster> of(List<Oklab> colours, int most) {
    if (colours.isEmpty() || most < 1) {
      throw new IllegalArgumentException(
          "clusters need colours and room, had " + colours.size() + " and " + most);
    }
    List<Oklab> centres = seeds(colours, most);
    int[] nearest = new int[colours.size()];
    Arrays.fill(nearest, -1);
    for (int round = 0; round < ROUNDS && assign(colours, centres, nearest); round++) {
      centres = means(colours, centres, nearest);
    }
    return sorted(colours, centres, nearest);
  }

  private static List<Oklab> seeds(List<Oklab> colours, int most) {
    Random random = new Random(SEED);
    List<Oklab> seeds = new ArrayList<>();
    double[] squared = new double[colours.size()];
    Arrays.fill(squared, Double.POSITIVE_INFINITY);
    Oklab next = colours.get(random.nextInt(colours.size()));
    while (next != null) {
      seeds.add(next);
      double sum = 0;
      for (int i = 0; i < squared.length; i++) {
        squared[i] = Math.min(squared[i], squared(colours.get(i), next));
        sum += squared[i];
      }
      next = sum == 0 || seeds.size() == most ? null : drawn(colours, squared, sum, random);
    }
    return seeds;
  }

  private static Oklab drawn(List<Oklab> colours, double[] squared, double sum, Random random) {
    double left = random.nextDouble() * sum;
    int last = 0;
    for (int i = 0; i < squared.length; i++) {
      if (squared[i] > 0) {
        last = i;
        left -= squared[i];
        if (left < 0) {
          break;
        }
      }
    }
    return colours.get(last);
  }

  /** Sends each colour to its nearest centre; whether any changed. */
  private static boolean assign(List<Oklab> colours, List<Oklab> centres, int[] nearest) {
    boolean changed = false;
    for (int i = 0; i < nearest.length; i++) {
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int c = 0; c < centres.size(); c++) {
        double away = squared(colours.get(i), centres.get(c));
        if (away < least) {
          least = away;
          best = c;
        }
      }
      changed |= nearest[i] != best;
      nearest[i] = best;
    }
    return changed;
  }

  private static List<Oklab> means(List<Oklab> colours, List<Oklab> centres, int[] nearest) {
    double[][] sums = new double[centres.size()][4];
    for (int i = 0; i < nearest.length; i++) {
      double[] sum = sums[nearest[i]];
      sum[0] += colours.get(i).l();
      sum[1] += colours.get(i).a();
      sum[2] += colours.get(i).b();
      sum[3]++;
    }
    List<Oklab> means = new ArrayList<>();
    for (int c = 0; c < sums.length; c++) {
      double[] sum = sums[c];
      means.add(
          sum[3] == 0
              ? centres.get(c)
              : new Oklab(sum[0] / sum[3], sum[1] / sum[3], sum[2] / sum[3]));
    }
    return means;
  }

  private static List<Cluster> sorted(List<Oklab> colours, List<Oklab> centres, int[] nearest) {
    int[] counts = new int[centres.size()];
    for (int cluster : nearest) {
      counts[cluster]++;
    }
    List<Cluster> clusters = new ArrayList<>();
    for (int c = 0; c < counts.length; c++) {
      if (counts[c] > 0) {
        clusters.add(new Cluster(centres.get(c), (double) counts[c] / colours.size()));
      }
    }
    clusters.sort(Comparator.comparingDouble(Cluster::share).reversed());
    return clusters;
  }

  private static double squared(Oklab one, Oklab other) {
    double l = one.l() - other.l();
    double a = one.a() - other.a();
    double b = one.b() - other.b();
    return l * l + a * a + b * b;
  }
}
