package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Proposal;
import org.panwright.analysis.judge.Judgement;

class ChooseWordsTest {
  private static final Judgement SOME =
      Lineups.judge(Lineups.kit(Lineups.paints("PB29"), 1, "PB29"));

  @Test
  void aProofIsSaidAndSoIsWhereItEnds() {
    Choice choice = choice(5, 5, proposal(0.8, 0.8, true), proposal(0.7, 0.7, true));
    assertThat(ChooseWords.worth(choice, 0))
        .isEqualTo("Worth 80.0 of 100, and no lineup under these conditions is worth more.");
    assertThat(ChooseWords.worth(choice, 1))
        .isEqualTo(
            "Worth 70.0 of 100, and none that differs from those above in 3 paints or more is worth"
                + " more.");
  }

  @Test
  void whatIsNotProvenIsNotSaidToBe() {
    Choice whole = choice(48, 48, proposal(0.86, 0.98, false), proposal(0.85, 0.98, false));
    assertThat(ChooseWords.worth(whole, 0)).contains("not proven", "At most 98.0 is possible");
    assertThat(ChooseWords.worth(whole, 1)).contains("not proven").doesNotContain("98.0");
    Choice part = choice(200, 48, proposal(0.86, 1, false));
    assertThat(ChooseWords.worth(part, 0))
        .contains("of the paints looked at, not proven")
        .doesNotContain("100.0");
  }

  private static Choice choice(int allowed, int considered, Proposal... proposals) {
    return new Choice(List.of(proposals), 3, allowed, considered, 10, List.of());
  }

  private static Proposal proposal(double worth, double bound, boolean proven) {
    return new Proposal(
        List.of("PB29"),
        List.of(),
        worth,
        Map.of(),
        bound,
        proven,
        SOME.ring(),
        SOME.reach(),
        Optional.empty(),
        List.of());
  }
}
