package org.panwright.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class WashStrengthsTest {
  @Test
  void eachWashIsThinnerThanTheOneBefore() {
    double before = Double.POSITIVE_INFINITY;
    for (Wash wash : Wash.values()) {
      assertThat(WashStrengths.USUAL.load(wash)).isLessThan(before).isPositive();
      before = WashStrengths.USUAL.load(wash);
    }
  }

  @Test
  void middleWashesStepByAboutTheSameFactor() {
    // Common practice: tea to coffee to milk are near-equal steps in density, about 2.3 each.
    double coffee = WashStrengths.USUAL.load(Wash.COFFEE);

    assertThat(coffee / WashStrengths.USUAL.load(Wash.TEA)).isBetween(2.0, 2.8);
    assertThat(WashStrengths.USUAL.load(Wash.MILK) / coffee).isBetween(2.0, 2.8);
  }

  @Test
  void oneLoadCanBeChanged() {
    WashStrengths changed = WashStrengths.USUAL.with(Wash.TEA, 0.05);

    assertThat(changed.load(Wash.TEA)).isEqualTo(0.05);
    assertThat(changed.load(Wash.MILK)).isEqualTo(WashStrengths.USUAL.load(Wash.MILK));
  }

  @Test
  void loadsThatDoNotFallAreRefused() {
    assertThatThrownBy(() -> WashStrengths.USUAL.with(Wash.TEA, 0.2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must fall");
    assertThatThrownBy(() -> WashStrengths.USUAL.with(Wash.BUTTER, 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WashStrengths.USUAL.with(Wash.TEA, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new WashStrengths(List.of(1.0, 0.5)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("there are 5");
  }
}
