package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecipeTest {
  @Test
  void recipeNamesEachPaintOnce() {
    assertThatThrownBy(() -> Recipe.of("blue", 1, "blue", 2))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("blue");
  }

  @Test
  void recipeNeedsAPaint() {
    assertThatThrownBy(() -> new Recipe(List.of())).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Recipe.of(" ")).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void partsAreAboveNothing(double parts) {
    assertThatThrownBy(() -> new Portion("blue", parts))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("parts must be above 0");
  }

  @Test
  void ratiosOfTheGridRunFromOnePaintToTheOtherAndMirror() {
    List<Ratio> grid = Ratio.GRID;

    assertThat(grid.get(Ratio.EVEN)).isEqualTo(new Ratio(1, 1));
    for (int i = 0; i < grid.size(); i++) {
      Ratio mirror = grid.get(grid.size() - 1 - i);
      assertThat(mirror.first()).isEqualTo(grid.get(i).second());
      assertThat(mirror.second()).isEqualTo(grid.get(i).first());
      if (i > 0) {
        assertThat(grid.get(i).firstShare()).isLessThan(grid.get(i - 1).firstShare());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "1, 0", "-1, 2"})
  void ratioPartsAreAboveNothing(int first, int second) {
    assertThatThrownBy(() -> new Ratio(first, second)).isInstanceOf(IllegalArgumentException.class);
  }
}
