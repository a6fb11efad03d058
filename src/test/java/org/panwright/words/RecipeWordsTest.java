package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.subject.Match;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.Trust;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Wash;

class RecipeWordsTest {
  private static final Kit KIT = Lineups.kit(Lineups.paints("PB29", "PY43", "PBr7"), 3);

  @Test
  void namesPartsAndPaints() {
    assertThat(RecipeWords.recipe(Recipe.of("PB29"), KIT)).isEqualTo("PB29");
    assertThat(RecipeWords.recipe(Recipe.of("PB29", 1, "PY43", 3), KIT))
        .isEqualTo("1 part PB29 and 3 parts PY43");
    Recipe three =
        new Recipe(
            List.of(new Portion("PB29", 2), new Portion("PY43", 1.5), new Portion("PBr7", 1)));
    assertThat(RecipeWords.recipe(three, KIT))
        .isEqualTo("2 parts PB29, 1.5 parts PY43 and 1 part PBr7");
  }

  @ParameterizedTest
  @CsvSource({
    "0.25, 'PB29, milk'",
    "0.28, 'PB29, milk'",
    "0.32, 'PB29, a little thicker than milk'",
    "0.20, 'PB29, a little thinner than milk'"
  })
  void namesTheWash(double load, String said) {
    Match match = new Match(Recipe.of("PB29"), Wash.MILK, load, new Lab(50, 0, 0), 2.04);
    assertThat(RecipeWords.match(match, KIT)).isEqualTo(said);
    assertThat(RecipeWords.nearness(match, new Trust(OpticsSource.SWATCHES, 3.8)))
        .isEqualTo("hard to tell apart (ΔE00 2.0, swatch ±4)");
  }
}
