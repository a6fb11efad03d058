package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.compare.Comparison;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;

class ComparisonWordsTest {
  private static final List<Paint> SHELF = Lineups.paints("PY154", "PR122", "PB29");
  private static final Kit ALL = Lineups.kit(SHELF, 3, "PY154", "PR122", "PB29");
  private static final Kit TWO = Lineups.kit(SHELF, 3, "PY154", "PB29");

  @Test
  void saysWhatIsLostAndWhatToMove() {
    Comparison comparison = Comparison.of(Lineups.judge(ALL), Lineups.judge(TWO));
    assertThat(ComparisonWords.hues(comparison))
        .isNotEmpty()
        .allMatch(s -> s.startsWith("Lost: clean "));
    assertThat(ComparisonWords.moves(comparison, ALL, ALL.boxes().get(0)))
        .containsExactly("Take PR122 out of well 2.", "Move PB29 from well 3 to well 2.");
    assertThat(ComparisonWords.reach(comparison, "Full", "Short"))
        .startsWith("Short mixes ")
        .endsWith("Full mixes 100 % of what Short can.");
    assertThat(ComparisonWords.darks(comparison, "Full", "Short")).contains("Full L* ");
  }

  @Test
  void saysThatNothingDiffers() {
    Comparison comparison = Comparison.of(Lineups.judge(ALL), Lineups.judge(ALL));
    assertThat(ComparisonWords.hues(comparison)).containsExactly(ComparisonWords.SAME_HUES);
    assertThat(ComparisonWords.moves(comparison, ALL, ALL.boxes().get(0)))
        .containsExactly("Nothing has to be moved.");
  }
}
