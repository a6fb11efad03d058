package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.colour.Lab;

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

  /** Greys 10 apart lie two cells apart, so no cell stands in for another. */
  @Test
  void coverIsTheShareOfCommonCells() {
    Reach three = reach(0, 10, 20);
    Reach two = reach(10, 20);
    Reach other = reach(20, 30);
    assertThat(two.coveredBy(three)).isEqualTo(1);
    assertThat(three.coveredBy(two)).isCloseTo(2 / 3.0, within(1e-12));
    assertThat(other.coveredBy(two)).isEqualTo(0.5);
    assertThat(reach().coveredBy(two)).isEqualTo(1);
    assertThat(three.size()).isEqualTo(3);
  }

  @Test
  void aNeighbouringCellCovers() {
    assertThat(reach(12).coveredBy(reach(17))).isEqualTo(1);
    assertThat(reach(12).coveredBy(reach(22))).isZero();
    assertThat(reach(100).coveredBy(reach(96))).isEqualTo(1);
  }

  @Test
  void samplesAreFarFromEachOther() {
    Reach wide = reach(2, 12, 22, 32, 92);
    assertThat(wide.samplesBeyond(reach(22), 2))
        .containsExactly(new Lab(2.5, 0 + 2.5, 2.5), new Lab(92.5, 2.5, 2.5));
    assertThat(wide.samplesBeyond(reach(22), 12)).hasSize(4);
    assertThat(wide.samplesBeyond(wide, 12)).isEmpty();
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
