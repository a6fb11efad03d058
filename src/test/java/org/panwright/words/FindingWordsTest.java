package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.finding.AlsoSpare;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.kit.Kit;

class FindingWordsTest {
  @Test
  void everyFindingHasATitleAMeaningAndALabelForItsCure() {
    Kit[] kits = {
      Lineups.kit(Lineups.paints(), 3),
      Lineups.kit(Lineups.paints("PB29", "PR108"), 3),
      Lineups.kit(Lineups.paints("PB29", "PR122", "PR108", "PY154"), 3, "PY154", "PR122", "PR108"),
      Lineups.kit(Lineups.paints("PY154", "PY43", "PY175", "PB29"), 3, "PY154", "PY43", "PY175"),
    };
    for (Kit kit : kits) {
      for (Finding finding : Lineups.judge(kit).findings()) {
        assertThat(FindingWords.title(finding, kit)).matches("[A-Z].*[^.]");
        assertThat(FindingWords.meaning(finding, kit)).matches("(?s)[A-Z].*\\.");
        assertThat(FindingWords.action(finding, kit).isPresent())
            .isEqualTo(finding.cure().isPresent());
      }
    }
  }

  @Test
  void namesMetalsAndDefersToTheMaker() {
    Kit kit = Lineups.kit(Lineups.paints("PR108"), 1, "PR108");
    Finding metals = Lineups.judge(kit).findings().get(Lineups.judge(kit).findings().size() - 1);
    assertThat(FindingWords.title(metals, kit)).contains("cadmium");
    assertThat(FindingWords.meaning(metals, kit))
        .contains("Cadmium in PR108")
        .contains("safety sheet and local rules");
  }

  @Test
  void estimatesThatCannotBeToldApartAreSaidToBeEstimates() {
    Kit kit = Lineups.kit(Lineups.paints("PY154", "PY1"), 2, "PY154", "PY1");
    Finding twins =
        Lineups.judge(kit).findings().stream()
            .filter(NearTwins.class::isInstance)
            .findFirst()
            .orElseThrow();
    assertThat(FindingWords.meaning(twins, kit))
        .contains("Both are estimates, known to about ±9 only")
        .doesNotContain("same colour to the eye");
  }

  @Test
  void morePaintsThatCouldBeSparedAreNamedInOne() {
    Kit kit = Lineups.kit(Lineups.paints("PY154", "PY1"), 2, "PY154", "PY1");
    AlsoSpare two = new AlsoSpare(List.of("PY154", "PY1"));
    assertThat(FindingWords.title(two, kit)).isEqualTo("2 more could be spared, one at a time");
    assertThat(FindingWords.meaning(two, kit)).contains("Each of PY154 and PY1", "look again");
    assertThat(FindingWords.title(new AlsoSpare(List.of("PY1")), kit))
        .isEqualTo("PY1 could be spared too");
  }
}
