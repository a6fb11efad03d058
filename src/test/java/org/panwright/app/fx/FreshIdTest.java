package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class FreshIdTest {
  @Test
  void theFirstFreeNumberIsTaken() {
    assertThat(FreshId.of("box", Set.of())).isEqualTo("box-1");
    assertThat(FreshId.of("box", Set.of("box-1", "box-3"))).isEqualTo("box-2");
  }
}
