package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Farthest-point choice as in Gonzalez, Theoretical Computer Science 38 (1985), pp. 293–306. */
class RepresentativesTest {

  /** By hand: the mean is 4.4, so 11 comes first; 0 lies furthest from it; then 5. */
  @Test
  void eachChosenPointIsTheFurthestFromThoseChosenBefore() {
    double[][] line = {{0}, {1}, {5}, {5}, {11}};
    assertThat(Representatives.farApart(line, 1)).containsExactly(false, false, false, false, true);
    assertThat(Representatives.farApart(line, 2)).containsExactly(true, false, false, false, true);
    assertThat(Representatives.farApart(line, 3)).containsExactly(true, false, true, false, true);
  }

  @Test
  void noPointIsChosenTwice() {
    double[][] equal = {{3}, {3}, {3}};
    assertThat(Representatives.farApart(equal, 2)).containsExactly(true, true, false);
    assertThat(Representatives.farApart(equal, 9)).containsExactly(true, true, true);
  }

  /** Gonzalez: the cover found is at most twice as wide as the best one for as many points. */
  @Test
  void nothingLiesFurtherFromTheChosenThanTwiceTheBestCover() {
    double[][] grid = new double[100][];
    for (int i = 0; i < grid.length; i++) {
      grid[i] = new double[] {i % 10, Math.floorDiv(i, 10)};
    }
    boolean[] chosen = Representatives.farApart(grid, 4);
    double worst = 0;
    for (double[] point : grid) {
      double nearest = Double.POSITIVE_INFINITY;
      for (int j = 0; j < grid.length; j++) {
        if (chosen[j]) {
          nearest = Math.min(nearest, Math.hypot(point[0] - grid[j][0], point[1] - grid[j][1]));
        }
      }
      worst = Math.max(worst, nearest);
    }
    // Four squares of 5 × 5 points: centres at a point of the grid reach their corners within √8.
    assertThat(worst).isLessThanOrEqualTo(2 * Math.sqrt(8));
  }
}
