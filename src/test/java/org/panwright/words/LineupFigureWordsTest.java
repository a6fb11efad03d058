package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.judge.Judgement;

class LineupFigureWordsTest {
  private static final String[] IDS = {"PY154", "PR254", "PB29", "PB15:3", "PBr7"};
  private static final Judgement JUDGEMENT =
      Lineups.judge(Lineups.kit(Lineups.paints(IDS), 5, IDS));

  @Test
  void everyPaintIsToldWithWhatItEarns() {
    assertThat(JUDGEMENT.earnings())
        .allSatisfy(
            earning ->
                assertThat(LineupFigureWords.earns(earning, JUDGEMENT))
                    .startsWith(earning.paintId() + ": without it ")
                    .endsWith("."));
  }

  /** Counted by hand; ultramarine leans violet, phthalo blue leans green (common practice). */
  @Test
  void theMakeUpIsSaidInCountsAndLeanings() {
    assertThat(LineupFigureWords.balance(JUDGEMENT.balance(), JUDGEMENT.kit()))
        .contains("1 yellow, 1 red, 2 blues and 1 earth.")
        .contains("PB29 leans violet.", "PB15:3 leans green.");
  }
}
