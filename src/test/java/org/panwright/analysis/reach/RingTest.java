package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;

class RingTest {
  @ParameterizedTest
  @CsvSource({"0, 0", "2.49, 0", "2.5, 1", "357.5, 0", "357.4, 71", "-3, 71", "180, 36"})
  void stepsAreCentredOnMultiplesOfFive(double hueDeg, int step) {
    assertThat(Ring.step(hueDeg)).isEqualTo(step);
  }

  /** Two colours at hues 3° and 12° on a straight line: at 5° and 10° by trigonometry. */
  @Test
  void neighboursAreJoinedByAStraightLine() {
    double[] path = new double[2 * Net.MIX];
    for (int wash = 0; wash < Net.WASHES; wash++) {
      put(path, wash * Net.COLOUR, 0.5, 0.2, 3);
      put(path, Net.MIX + wash * Net.COLOUR, 0.9, 0.1, 12);
    }
    Ring.Gatherer gatherer = new Ring.Gatherer();
    gatherer.trace(path, 2);
    Ring ring = gatherer.ring();
    assertThat(ring.chroma(1)).isCloseTo(Math.max(0.2, onLine(5)), within(1e-9));
    assertThat(ring.chroma(2)).isCloseTo(onLine(10), within(1e-9));
    assertThat(ring.chroma(0)).isZero();
    assertThat(ring.chroma(3)).isZero();
    assertThat(ring.chroma(Ring.Part.LIGHT, 2)).isCloseTo(onLine(10), within(1e-9));
    assertThat(ring.chroma(Ring.Part.MIDDLE, 1)).isCloseTo(0.2, within(1e-9));
  }

  /** Where the ray at a hue meets the line from (0.2, 3°) to (0.1, 12°), by the sine rule. */
  private static double onLine(double hueDeg) {
    double whole = Math.toRadians(9);
    double part = Math.toRadians(hueDeg - 3);
    return 0.2 * 0.1 * Math.sin(whole) / (0.2 * Math.sin(part) + 0.1 * Math.sin(whole - part));
  }

  private static void put(double[] path, int at, double l, double c, double hueDeg) {
    path[at + 3] = l;
    path[at + 4] = c * Math.cos(Math.toRadians(hueDeg));
    path[at + 5] = c * Math.sin(Math.toRadians(hueDeg));
  }

  /**
   * Brute force: 400 mixes between two paints in 60 dilutions each. Wherever that finds colour the
   * ring on the net leaves no hole: it promises at most 0.003 more chroma and misses at most 0.03.
   */
  @ParameterizedTest
  @CsvSource({"PY175, PB15:3", "PR122, PB15:3", "PY65, PR122", "PV19, PG7"})
  void comesNearAMixingWithoutSteps(String first, String second) {
    OpticsTable table = OpticsTable.of(Lineups.paints(first, second), Lineups.LIBRARY, Paper.WHITE);
    Ring.Gatherer net = new Ring.Gatherer();
    new NetWalk(table, WashStrengths.USUAL, () -> false).all(new int[] {0, 1}, net);
    double[] dense = new double[Ring.STEPS];
    Mixer mixer = new Mixer(table);
    for (int i = 0; i <= 400; i++) {
      double share = i / 400.0;
      Recipe recipe =
          i == 0 ? Recipe.of(second) : i == 400 ? Recipe.of(first) : parts(first, second, share);
      for (int j = 0; j <= 60; j++) {
        double load = Math.pow(0.04, j / 60.0);
        Oklch colour = Oklab.ofD65(Light.D65.xyz(mixer.dry(recipe, load))).toOklch();
        int step = Ring.step(colour.hueDeg());
        dense[step] = Math.max(dense[step], colour.c());
      }
    }
    for (int step = 0; step < Ring.STEPS; step++) {
      if (dense[step] > 0 && dense[(step + 1) % 72] > 0 && dense[(step + 71) % 72] > 0) {
        assertThat(net.ring().chroma(step))
            .as("step " + step)
            .isBetween(dense[step] - 0.03, dense[step] + 0.003);
      }
    }
  }

  private static Recipe parts(String first, String second, double share) {
    return Recipe.of(first, share, second, 1 - share);
  }
}
