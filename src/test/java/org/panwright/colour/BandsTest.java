package org.panwright.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BandsTest {
  @Test
  void bandsRunFrom380To730By10() {
    assertThat(Bands.wavelengthNm(0)).isEqualTo(380);
    assertThat(Bands.wavelengthNm(17)).isEqualTo(550);
    assertThat(Bands.wavelengthNm(Bands.COUNT - 1)).isEqualTo(730);
  }

  @Test
  void bandsOutsideAreRefused() {
    assertThatThrownBy(() -> Bands.wavelengthNm(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    assertThatThrownBy(() -> Bands.wavelengthNm(36)).isInstanceOf(IndexOutOfBoundsException.class);
  }
}
