package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class StartTest {
  @Test
  void withoutArgumentsTheWindowOpens() {
    assertThat(Start.of(List.of(), true)).isEqualTo(Start.WINDOW);
  }

  @Test
  void aKitFileOpensInTheWindow() {
    assertThat(Start.of(List.of("/home/me/Sea.kit.JSON"), true)).isEqualTo(Start.WINDOW);
  }

  @Test
  void aCommandRunsWhetherThereIsADisplayOrNot() {
    assertThat(Start.of(List.of("mix", "PB29"), true)).isEqualTo(Start.COMMAND);
    assertThat(Start.of(List.of("report", "sea.kit.json"), false)).isEqualTo(Start.COMMAND);
  }

  @Test
  void withoutADisplayTheDemoIsReported() {
    assertThat(Start.of(List.of(), false)).isEqualTo(Start.REPORT);
  }
}
