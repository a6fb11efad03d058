package org.panwright.analysis.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class MuddySearchTest {
  /**
   * By hand: of 0.1, 0.2, 0.3, 0.4 without the last the middle is 0.2; of an even number the lower.
   */
  @Test
  void theTypicalLossIsTheMiddleOfTheOthers() {
    Map<String, Double> byPaint = Map.of("a", 0.1, "b", 0.3, "c", 0.2, "d", 0.4);
    assertThat(MuddySearch.typical(byPaint, "d")).isEqualTo(0.2);
    assertThat(MuddySearch.typical(Map.of("a", 0.1, "b", 0.3, "d", 0.4), "d")).isEqualTo(0.1);
  }
}
