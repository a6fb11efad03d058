package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Rings written down by hand; the arcs follow from the definition by counting steps. */
class HueArcTest {
  private static double[] flat(double chroma) {
    double[] ring = new double[Ring.STEPS];
    Arrays.fill(ring, chroma);
    return ring;
  }

  private static double[] flatBut(double chroma, double other, int from, int steps) {
    double[] ring = flat(chroma);
    for (int i = 0; i < steps; i++) {
      ring[(from + i) % Ring.STEPS] = other;
    }
    return ring;
  }

  @Test
  void threeStepsBelowTheShareMakeAGap() {
    assertThat(HueArc.missing(flatBut(0.2, 0.129, 10, 3), flat(0.2)))
        .containsExactly(new HueArc(10, 3));
  }

  @Test
  void twoStepsMakeNone() {
    assertThat(HueArc.missing(flatBut(0.2, 0, 10, 2), flat(0.2))).isEmpty();
  }

  @Test
  void theShareItselfIsEnough() {
    assertThat(HueArc.missing(flatBut(0.2, 0.13, 10, 9), flat(0.2))).isEmpty();
  }

  @Test
  void aGapMayCrossZero() {
    HueArc arc = new HueArc(70, 5);
    assertThat(HueArc.missing(flatBut(0.2, 0, 70, 5), flat(0.2))).containsExactly(arc);
    assertThat(arc.fromDeg()).isEqualTo(347.5);
    assertThat(arc.toDeg()).isEqualTo(12.5);
  }

  @Test
  void whatTheShelfHardlyHasIsNoGap() {
    assertThat(HueArc.missing(flat(0), flat(0.049))).isEmpty();
  }

  @Test
  void everythingMissingIsTheWholeCircle() {
    assertThat(HueArc.missing(flat(0), flat(0.05))).containsExactly(new HueArc(0, 72));
  }

  @Test
  void twoGapsComeInTheOrderOfTheCircle() {
    double[] lineup = flatBut(0.2, 0.01, 60, 4);
    System.arraycopy(flatBut(0.2, 0.01, 5, 3), 5, lineup, 5, 3);
    assertThat(HueArc.missing(lineup, flat(0.2)))
        .containsExactlyInAnyOrder(new HueArc(5, 3), new HueArc(60, 4));
  }

  @Test
  void closingFillsDipsOfTwoStepsToTheLowerWall() {
    double[] ring = flatBut(0.2, 0, 10, 2);
    ring[12] = 0.15;
    assertThat(HueArc.closed(ring)[10]).isEqualTo(0.15);
    assertThat(HueArc.closed(ring)[11]).isEqualTo(0.15);
    assertThat(HueArc.closed(ring)[13]).isEqualTo(0.2);
  }

  @Test
  void closingLeavesDipsOfThreeSteps() {
    double[] ring = flatBut(0.2, 0.03, 71, 3);
    assertThat(HueArc.closed(ring)).isEqualTo(ring);
  }

  @Test
  void closesCountsOnlyWhatTheShelfHas() {
    // Missing 0.1 in each of four steps; made good 0.1 (0.5 too much does not count), 0.05, 0, 0.
    double[] better = flat(0.1);
    better[10] = 0.7;
    better[11] = 0.15;
    better[12] = 0.02;
    assertThat(new HueArc(10, 4).closes(flat(0.1), better, flat(0.2)))
        .isCloseTo(0.15 / 0.4, within(1e-12));
  }
}
