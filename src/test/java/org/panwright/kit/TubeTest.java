package org.panwright.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TubeTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  /** 21.5 g on the scales, 6.25 g empty, 1.5 g/ml: 15.25 g of paint, 10.1667 ml. */
  @Test
  void weighingTellsTheVolume() {
    Remainder left = new Remainder.ByWeight(21.5, 6.25, 1.5);
    assertThat(left.ml()).isCloseTo(10.166_667, within(1e-6));
  }

  @Test
  void paintTakenOutOfAWeighedTubeLightensIt() {
    Tube tube = tube(new Remainder.ByWeight(12, 6, 1.5)).less(2, DAY);
    assertThat(tube.left()).isEqualTo(new Remainder.ByWeight(9, 6, 1.5));
    assertThat(tube.leftMl()).isEqualTo(2);
    assertThat(tube.opened()).hasValue(DAY);
  }

  @Test
  void noMoreComesOutThanWasIn() {
    assertThat(tube(new Remainder.ByVolume(1)).less(3, DAY).leftMl()).isZero();
    assertThat(tube(new Remainder.ByWeight(7, 6, 1)).less(3, DAY).leftMl()).isZero();
  }

  @ParameterizedTest(name = "size {0} ml, {1} left, price {2}, opened {3}")
  @CsvSource({
    "5, 5.1, 3,  2026-01-01",
    "0, 0,   3,  2026-01-01",
    "5, -1,  3,  2026-01-01",
    "5, 4,   -1, 2026-01-01",
    "5, 4,   3,  9999-01-01",
    "5, 4,   3,  0001-01-01"
  })
  void aTubeThatCannotBeIsRefused(double size, double left, double price, LocalDate opened) {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Tube(
                    "t",
                    "p",
                    size,
                    new Remainder.ByVolume(left),
                    OptionalDouble.of(price),
                    Optional.of(opened),
                    ""));
  }

  /** A nominal 5 ml tube is filled a little over and its density is a guess. */
  @Test
  void aWeighedTubeMayHoldALittleMoreThanItsSize() {
    assertThat(tube(new Remainder.ByWeight(11.5, 6, 1)).leftMl()).isEqualTo(5.5);
    assertThatIllegalArgumentException().isThrownBy(() -> tube(new Remainder.ByWeight(12.5, 6, 1)));
  }

  private static Tube tube(Remainder left) {
    return new Tube("t", "p", 5, left, OptionalDouble.empty(), Optional.empty(), "");
  }
}
