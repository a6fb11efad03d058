package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.subject.Match;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

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

  /** Matches that are told, not searched for: the paints are estimates, known to 9 each (0036). */
  @Test
  void saysWhereTheMixesAreKnownLessWellThanTheyDiffer() {
    SubjectColour sea = new SubjectColour("sea", new Lab(50, -10, -10));
    assertThat(told(sea, 1.5, 0.6))
        .containsExactly(
            "sea: Full ΔE00 1.5, Short ΔE00 0.6.",
            "These mixes are known to about ±9 (ΔE00): a smaller difference between the two is not"
                + " sure.");
    assertThat(told(sea, 14.0, 0.6)).containsExactly("sea: Full ΔE00 14.0, Short ΔE00 0.6.");
  }

  private static List<String> told(SubjectColour colour, double first, double second) {
    SubjectPair pair =
        new SubjectPair(colour, Optional.of(match(first)), Optional.of(match(second)));
    return ComparisonWords.subjects(
        List.of(pair), Lineups.judge(ALL), Lineups.judge(TWO), "Full", "Short");
  }

  private static Match match(double deltaE) {
    Recipe blue = Recipe.of(SHELF.get(2).id());
    return new Match(blue, Wash.MILK, 0.25, new Lab(50, 0, 0), deltaE);
  }
}
