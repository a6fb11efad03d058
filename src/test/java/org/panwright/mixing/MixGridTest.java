package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.panwright.Tolerance;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

class MixGridTest {
  private static final int[] PAINTS = {4, 0, 2};
  private static final MixGrid GRID =
      MixGrid.of(Samples.TABLE, PAINTS, WashStrengths.USUAL, () -> false);

  @Test
  void everyCellIsTheMixItSays() {
    Mixer mixer = new Mixer(Samples.TABLE);
    for (int row = 0; row < PAINTS.length; row++) {
      for (int column = 0; column < PAINTS.length; column++) {
        for (int i = 0; i < Ratio.GRID.size(); i++) {
          for (Wash wash : Wash.values()) {
            Lab expected =
                mixer.lab(recipe(row, column, Ratio.GRID.get(i)), WashStrengths.USUAL.load(wash));
            assertThat(Difference.ab(GRID.lab(row, column, i, wash), expected))
                .isCloseTo(0.0, Tolerance.FAST_LAB);
          }
        }
      }
    }
  }

  private static Recipe recipe(int row, int column, Ratio ratio) {
    String first = Samples.TABLE.ids().get(PAINTS[row]);
    String second = Samples.TABLE.ids().get(PAINTS[column]);
    return row == column
        ? Recipe.of(first)
        : Recipe.of(first, ratio.first(), second, ratio.second());
  }

  @Test
  void gridKnowsItsPaints() {
    assertThat(GRID.size()).isEqualTo(3);
    assertThat(GRID.paint(0)).isEqualTo(4);
    assertThat(GRID.paint(2)).isEqualTo(2);
  }

  @Test
  void gridNoLongerWantedStops() {
    assertThatThrownBy(() -> MixGrid.of(Samples.TABLE, PAINTS, WashStrengths.USUAL, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void noPaintsMakeAnEmptyGrid() {
    assertThat(MixGrid.of(Samples.TABLE, new int[0], WashStrengths.USUAL, () -> false).size())
        .isZero();
  }
}
