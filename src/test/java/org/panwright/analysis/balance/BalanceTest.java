package org.panwright.analysis.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.Wish;
import org.panwright.colour.Oklch;
import org.panwright.kit.Kit;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;

class BalanceTest {
  @Test
  void countsByHand() {
    String[] ids = {"PY154", "PR254", "PV19", "PB29", "PG7", "PY43", "PBr7", "PW6"};
    Balance balance = Lineups.judge(kit(ids)).balance();
    assertThat(balance.paints()).isEqualTo(8);
    assertThat(balance.groups())
        .containsEntry(HueGroup.YELLOWS, 1)
        .containsEntry(HueGroup.REDS, 2)
        .containsEntry(HueGroup.VIOLETS, 0)
        .containsEntry(HueGroup.BLUES, 1)
        .containsEntry(HueGroup.GREENS, 1)
        .containsEntry(HueGroup.EARTHS, 2)
        .containsEntry(HueGroup.NEUTRALS, 1);
    assertThat(balance.severalPigments()).isZero();
    assertThat(balance.light() + balance.dark()).isBetween(2, 8);
  }

  /** Which way painters say these lean, common practice. */
  @ParameterizedTest
  @CsvSource({
    "PY3, GREEN",
    "PY83, ORANGE",
    "PB29, VIOLET",
    "PB15:3, GREEN",
    "PR122, VIOLET",
    "PG7, BLUE",
    "PR188, ORANGE"
  })
  void leansAsPaintersSay(String pigment, HueFamily to) {
    assertThat(Lineups.judge(kit(pigment)).balance().leanings()).containsEntry(pigment, to);
  }

  @ParameterizedTest
  @CsvSource({
    "RED, 20, ",
    "RED, 14, ROSE",
    "RED, 31, ORANGE",
    "RED, 350, ROSE",
    "ROSE, 347, ",
    "ROSE, 2, RED",
    "ROSE, 330, VIOLET",
    "EARTH_RED, 350, "
  })
  void leaningFollowsTheBounds(HueFamily family, double hueDeg, HueFamily to) {
    assertThat(Leaning.of(family, hueDeg)).isEqualTo(Optional.ofNullable(to));
  }

  /** A green mixed from yellow and blue is a green, whichever share is larger. */
  @Test
  void aTubeOfSeveralPigmentsCountsByItsColour() {
    assertThat(HueGroup.of(new Oklch(0.7, 0.12, 130))).isEqualTo(HueGroup.GREENS);
    assertThat(HueGroup.of(new Oklch(0.5, 0.01, 130))).isEqualTo(HueGroup.NEUTRALS);
    assertThat(HueGroup.of(new Oklch(0.6, 0.08, 70))).isEqualTo(HueGroup.EARTHS);
    assertThat(HueGroup.of(new Oklch(0.8, 0.16, 60))).isEqualTo(HueGroup.REDS);
    assertThat(HueGroup.of(new Oklch(0.5, 0.16, 300))).isEqualTo(HueGroup.VIOLETS);
  }

  @Test
  void aWhiteIsRemarkedOn() {
    assertThat(Lineups.judge(kit("PB29", "PW6")).findings())
        .contains(new Nature(Nature.Effect.WHITE, List.of("PW6"), Optional.empty()));
  }

  @Test
  void aWishedForRoseIsWorthItOnAShelfWithoutOne() {
    List<Paint> shelf = new ArrayList<>(Lineups.paints("PY154", "PB15:3"));
    shelf.add(Lineups.paint("PR122", Ownership.WISHED));
    shelf.add(Lineups.paint("PY175", Ownership.WISHED));
    List<Finding> wishes =
        Lineups.judge(Lineups.kit(shelf, 3, "PY154", "PB15:3")).findings().stream()
            .filter(Wish.class::isInstance)
            .toList();
    assertThat(wishes).hasSize(1);
    Wish wish = (Wish) wishes.get(0);
    assertThat(wish.paintId()).isEqualTo("PR122");
    assertThat(wish.brought()).isGreaterThan(wish.possible() / 0.65);
  }

  private static Kit kit(String... ids) {
    return Lineups.kit(Lineups.paints(ids), ids.length, ids);
  }
}
