package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;

/** The share told to somebody who waits for a fit. */
class FitWatchTest {
  /** After the usual number of questions 1 − 1/e = 0.632 of a part is done (any table of e). */
  @Test
  void theShareRisesWithTheQuestionsAndStaysWithinItsPart() {
    List<Double> told = new ArrayList<>();
    FitWatch watch = new FitWatch(() -> false, told::add);

    BooleanSupplier part = watch.part(0.2, 1, 10);
    for (int i = 0; i < 200; i++) {
      assertThat(part.getAsBoolean()).isFalse();
    }

    assertThat(told.get(0)).isEqualTo(0.2);
    assertThat(told.get(10)).isCloseTo(0.2 + 0.8 * 0.632, within(0.001));
    assertThat(told).isSorted().allMatch(share -> share <= 1);
  }

  @Test
  void theAnswerIsThatOfTheOneWhoWaits() {
    boolean[] gone = {false};
    BooleanSupplier part = FitWatch.of(() -> gone[0]).part(0, 1, FitWatch.ONE_FIT);
    assertThat(part.getAsBoolean()).isFalse();
    gone[0] = true;
    assertThat(part.getAsBoolean()).isTrue();
  }
}
