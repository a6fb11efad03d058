package org.panwright.app.faults;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FaultCodeTest {
  @Test
  void theSameFaultHasTheSameCodeWhateverItSays() {
    assertThat(FaultCode.of(fault("one"))).isEqualTo(FaultCode.of(fault("another")));
  }

  @Test
  void anotherKindOfFaultHasAnotherCode() {
    assertThat(FaultCode.of(new IllegalStateException()))
        .isNotEqualTo(FaultCode.of(new IllegalArgumentException()));
  }

  @Test
  void wrappingAFaultKeepsItsCode() {
    RuntimeException fault = fault("x");
    assertThat(FaultCode.of(new RuntimeException(fault))).isEqualTo(FaultCode.of(fault));
  }

  @Test
  void aCodeIsShortEnoughToReadAloud() {
    assertThat(FaultCode.of(fault("x"))).matches("[0-9A-F]{4}-[0-9A-F]{4}");
  }

  private static RuntimeException fault(String text) {
    return new IllegalStateException(text);
  }
}
