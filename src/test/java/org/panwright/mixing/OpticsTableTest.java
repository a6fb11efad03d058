package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.paint.Paper;

class OpticsTableTest {
  @Test
  void paintsKeepTheirOrderAndOptics() {
    assertThat(Samples.TABLE.size()).isEqualTo(5);
    assertThat(Samples.TABLE.ids()).containsExactly("yellow", "red", "blue", "white", "black");
    assertThat(Samples.TABLE.optics(Samples.TABLE.indexOf("blue"))).isEqualTo(Samples.BLUE);
    assertThat(Samples.TABLE.paper()).isEqualTo(Paper.WHITE);
  }

  @Test
  void twoPaintsOfOneIdAreRefused() {
    assertThatThrownBy(
            () ->
                OpticsTable.of(
                    List.of("blue", "blue"), List.of(Samples.BLUE, Samples.RED), Paper.WHITE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("blue");
  }

  @Test
  void listsOfDifferentLengthAreRefused() {
    assertThatThrownBy(() -> OpticsTable.of(List.of("blue"), List.of(), Paper.WHITE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void emptyTableIsAllowed() {
    assertThat(OpticsTable.of(List.of(), List.of(), Paper.WHITE).size()).isZero();
  }
}
