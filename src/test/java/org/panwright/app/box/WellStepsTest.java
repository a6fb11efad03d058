package org.panwright.app.box;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.BenchKit;
import org.panwright.kit.Box;
import org.panwright.kit.Well;

class WellStepsTest {
  /** Wells 1 2 3 above 4 5 6, a small dab place to the right of 3. */
  private final Box box = BenchKit.box();

  @ParameterizedTest(name = "{0} {1} is {2}")
  @CsvSource(
      nullValues = "edge",
      textBlock =
          """
          w1, RIGHT, w2
          w2, LEFT,  w1
          w1, DOWN,  w4
          w6, UP,    w3
          w3, RIGHT, d1
          w6, RIGHT, d1
          d1, LEFT,  w3
          d1, DOWN,  w6
          w1, LEFT,  edge
          w2, UP,    edge
          w5, DOWN,  edge
          d1, RIGHT, edge
          """)
  void arrowGoesToTheWellThatLiesThere(String from, WellSteps.Way way, String to) {
    Well start = box.find(from).orElseThrow();
    assertThat(WellSteps.next(box, start, way).map(Well::id).orElse(null)).isEqualTo(to);
  }
}
