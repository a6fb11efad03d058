package org.panwright.swatch.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Lab;

class MixErrorsTest {
  /** Two greys around L* 50 differ by their L* alone in CIEDE2000: there SL is 1. */
  @Test
  void quantilesRunStraightBetweenSortedValues() {
    // differences 1, 2, … 11: median 6, the tenth of eleven is 10 (rule 7 of Hyndman and Fan,
    // The American Statistician 50, 1996)
    List<Lab> predicted =
        IntStream.rangeClosed(1, 11).mapToObj(d -> new Lab(50 + d / 2.0, 0, 0)).toList();
    List<Lab> read =
        IntStream.rangeClosed(1, 11).mapToObj(d -> new Lab(50 - d / 2.0, 0, 0)).toList();

    MixErrors errors = MixErrors.of(predicted, read);

    assertThat(errors.n()).isEqualTo(11);
    assertThat(errors.median()).isCloseTo(6, within(1e-9));
    assertThat(errors.p90()).isCloseTo(10, within(1e-9));
    assertThat(errors.max()).isCloseTo(11, within(1e-9));
    assertThat(errors.shareUnder5()).isCloseTo(4.0 / 11, within(1e-12));
  }

  @Test
  void refusesNothing() {
    assertThatThrownBy(() -> MixErrors.of(List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
