package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Counted by hand: pairs and triples of whole numbers without a common divisor, at most 7. */
class PartsTest {
  @Test
  void thereAreSeventeenPartsOfTwoAndThirtyFourOfThree() {
    assertThat(Parts.TWO).hasSize(17).doesNotHaveDuplicates();
    assertThat(Parts.THREE).hasSize(34).doesNotContain(new Parts(2, 2, 2));
  }
}
