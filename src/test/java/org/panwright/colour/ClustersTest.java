package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Clusters.Cluster;

class ClustersTest {
  private static final Oklab SEA = new Oklab(0.5, -0.05, -0.1);
  private static final Oklab SAND = new Oklab(0.8, 0.02, 0.08);
  private static final Oklab SKY = new Oklab(0.85, -0.02, -0.05);

  /** Three heaps of known size, each spread by at most 0.01 about its middle. */
  @Test
  void findsThreeHeapsAndTheirShares() {
    List<Oklab> colours = new ArrayList<>();
    colours.addAll(heap(SEA, 600));
    colours.addAll(heap(SAND, 300));
    colours.addAll(heap(SKY, 100));
    Collections.shuffle(colours, new Random(3));
    List<Cluster> clusters = Clusters.of(colours, 3);
    assertThat(clusters).extracting(Cluster::share).containsExactly(0.6, 0.3, 0.1);
    assertThat(clusters.get(0).centre().a()).isCloseTo(SEA.a(), within(0.001));
    assertThat(clusters.get(1).centre().b()).isCloseTo(SAND.b(), within(0.001));
    assertThat(clusters.get(2).centre().l()).isCloseTo(SKY.l(), within(0.002));
  }

  @Test
  void theSameColoursGiveTheSameClusters() {
    List<Oklab> colours = heap(SEA, 500);
    assertThat(Clusters.of(colours, 6)).isEqualTo(Clusters.of(List.copyOf(colours), 6));
  }

  @Test
  void oneFlatColourIsOneCluster() {
    assertThat(Clusters.of(Collections.nCopies(400, SKY), 6))
        .singleElement()
        .satisfies(
            cluster -> {
              assertThat(cluster.share()).isEqualTo(1);
              assertThat(cluster.centre().l()).isCloseTo(SKY.l(), within(1e-12));
            });
  }

  /**
   * Each colour lies nearest to the centre that is the mean of its own: a fixed point of k-means.
   */
  @Test
  void sharesSumToOneAndCentresAreMeans() {
    List<Oklab> colours = heap(new Oklab(0.6, 0, 0), 300);
    List<Cluster> clusters = Clusters.of(colours, 4);
    assertThat(clusters.stream().mapToDouble(Cluster::share).sum()).isCloseTo(1, within(1e-12));
    double mean = colours.stream().mapToDouble(Oklab::l).average().orElseThrow();
    assertThat(clusters.stream().mapToDouble(c -> c.share() * c.centre().l()).sum())
        .isCloseTo(mean, within(1e-9));
  }

  @Test
  void noColourIsRefused() {
    assertThatThrownBy(() -> Clusters.of(List.of(), 3))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Oklab> heap(Oklab middle, int count) {
    Random random = new Random(11);
    List<Oklab> heap = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      heap.add(
          new Oklab(
              middle.l() + 0.02 * (random.nextDouble() - 0.5),
              middle.a() + 0.02 * (random.nextDouble() - 0.5),
              middle.b() + 0.02 * (random.nextDouble() - 0.5)));
    }
    return heap;
  }
}
