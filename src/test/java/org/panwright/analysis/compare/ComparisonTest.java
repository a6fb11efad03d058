package org.panwright.analysis.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.judge.Judgement;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;

class ComparisonTest {
  private static final List<Paint> SHELF =
      Lineups.paints("PY175", "PY65", "PR254", "PR122", "PB29", "PB15:3", "PBr7");

  @Test
  void aLineupAgainstItselfWinsAndLosesNothing() {
    Judgement judgement = judge("PY175", "PR122", "PB29");
    Comparison comparison = Comparison.of(judgement, judgement);
    assertThat(comparison.lost()).isEmpty();
    assertThat(comparison.won()).isEmpty();
    assertThat(comparison.firstCovered()).isEqualTo(1);
    assertThat(comparison.secondCovered()).isEqualTo(1);
    assertThat(comparison.onlyFirst()).isEmpty();
    assertThat(comparison.moves()).isEmpty();
    assertThat(comparison.inCommon()).containsExactly("PY175", "PR122", "PB29");
  }

  /** Without the magenta the violets and roses go (common practice); nothing is won. */
  @Test
  void leavingOutTheMagentaLosesRosesAndViolets() {
    Comparison comparison =
        Comparison.of(judge("PY175", "PR254", "PB29", "PR122"), judge("PY175", "PR254", "PB29"));
    assertThat(comparison.won()).isEmpty();
    assertThat(comparison.secondCovered()).isEqualTo(1);
    assertThat(comparison.firstCovered()).isLessThan(0.9);
    assertThat(comparison.lost()).isNotEmpty();
    assertThat(comparison.lost())
        .allSatisfy(shift -> assertThat(shift.less()).isLessThan(0.65 * shift.more()));
    assertThat(HueGap.hues(comparison.lost().get(0).fromDeg(), comparison.lost().get(0).toDeg()))
        .isNotEmpty();
    assertThat(comparison.onlyFirst()).isNotEmpty();
    assertThat(comparison.onlyFirst()).allSatisfy(lab -> assertThat(lab.a()).isPositive());
    assertThat(comparison.leaving()).containsExactly("PR122");
    assertThat(comparison.coming()).isEmpty();
  }

  @Test
  void turnedRoundWonAndLostChangePlaces() {
    Judgement one = judge("PY175", "PR254", "PB29");
    Judgement other = judge("PY65", "PR122", "PB15:3");
    Comparison there = Comparison.of(one, other);
    Comparison back = Comparison.of(other, one);
    assertThat(back.won()).isEqualTo(there.lost());
    assertThat(back.lost()).isEqualTo(there.won());
    assertThat(back.firstCovered()).isEqualTo(there.secondCovered());
    assertThat(back.onlySecond()).isEqualTo(there.onlyFirst());
    assertThat(back.firstDarkest()).isEqualTo(there.secondDarkest());
  }

  /** Paint by paint: PY175 stays, PR254 goes, PB29 changes wells, PR122 comes. */
  @Test
  void movesLeadFromOneBoxToTheOther() {
    Comparison comparison =
        Comparison.of(judge("PY175", "PR254", "PB29"), judge("PY175", "PB29", "PR122"));
    assertThat(comparison.moves())
        .containsExactly(
            new Move("PR254", Optional.of("w1"), Optional.empty()),
            new Move("PB29", Optional.of("w2"), Optional.of("w1")),
            new Move("PR122", Optional.empty(), Optional.of("w2")));
  }

  @Test
  void twoWellsOfOnePaintArePairedOff() {
    Comparison comparison =
        Comparison.of(judge("PB29", "PB29", "PY175"), judge("PY175", "PB29", "PB29"));
    assertThat(comparison.moves())
        .containsExactlyInAnyOrder(
            new Move("PB29", Optional.of("w0"), Optional.of("w2")),
            new Move("PY175", Optional.of("w2"), Optional.of("w0")));
  }

  @Test
  void otherWashesDoNotCompare() {
    Kit kit = Lineups.kit(SHELF, 3, "PB29");
    Judgement changed =
        Lineups.judge(new Edit.SetWashes(kit.washes().with(Wash.TEA, 0.03)).apply(kit));
    assertThatThrownBy(() -> Comparison.of(Lineups.judge(kit), changed))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anEmptyLineupOnlyLoses() {
    Comparison comparison = Comparison.of(judge("PB29"), judge());
    assertThat(comparison.firstCovered()).isZero();
    assertThat(comparison.secondCovered()).isEqualTo(1);
    assertThat(comparison.secondDarkest()).isEmpty();
    assertThat(comparison.onlyFirst()).hasSizeLessThanOrEqualTo(Comparison.SAMPLES);
    assertThat(comparison.onlyFirst()).extracting(Lab::b).allMatch(b -> b < 10);
  }

  private static Judgement judge(String... inBox) {
    return Lineups.judge(Lineups.kit(SHELF, 4, inBox));
  }
}
