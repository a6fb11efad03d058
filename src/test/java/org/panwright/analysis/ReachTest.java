package org.panwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReachTest {
  @ParameterizedTest(name = "{6}: {0} {1} {2} and {3} {4} {5}")
  @CsvSource({
    "50, 0, 0, 54.9, 4.9, 4.9, true",
    "50, 0, 0, 55, 0, 0, false",
    "50, -0.1, 0, 50, 0.1, 0, false",
    "50, -4.9, 0, 50, -0.1, 0, true",
    "100, 0, 0, 104, 0, 0, true",
    "50, 150, 0, 50, 139, 0, true",
    "-3, 0, 0, 2, 0, 0, true",
  })
  void cellsHaveEdgesOfFive(
      double l1, double a1, double b1, double l2, double a2, double b2, boolean same) {
    assertThat(Reach.cell(l1, a1, b1) == Reach.cell(l2, a2, b2)).isEqualTo(same);
    assertThat(Reach.cell(l1, a1, b1)).isBetween(0, Reach.CELLS - 1);
  }

  @Test
  void coverIsTheShareOfCommonCells() {
    Reach three = reach(0, 10, 20);
    Reach two = reach(10, 20);
    Reach other = reach(20, 30);
    assertThat(two.coveredBy(three)).isEqualTo(1);
    assertThat(three.coveredBy(two)).isEqualTo(2 / 3.0);
    assertThat(other.coveredBy(two)).isEqualTo(0.5);
    assertThat(reach().coveredBy(two)).isEqualTo(1);
    assertThat(three.size()).isEqualTo(3);
  }

  /** A reach of greys: one mix at each L* in all washes. */
  private static Reach reach(double... lightnesses) {
    Reach.Gatherer gatherer = new Reach.Gatherer();
    for (double l : lightnesses) {
      double[] colours = new double[Net.MIX];
      for (int at = 0; at < Net.MIX; at += Net.COLOUR) {
        colours[at] = l;
      }
      gatherer.single(0, colours);
    }
    return gatherer.reach();
  }
}
