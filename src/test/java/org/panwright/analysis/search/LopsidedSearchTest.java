package org.panwright.analysis.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.analysis.finding.Lopsided;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.worth.Earning;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.HueFamily;

/** Lineups whose lean any painter would name (common practice); shares counted by hand. */
class LopsidedSearchTest {
  private static final String[] CROWDED = {
    "PY154", "PY65", "PY3", "PY83", "PY175", "PR254", "PV19", "PB29", "PB15:3", "PG7", "PY43",
    "PBr7"
  };

  @Test
  void fiveYellowsOfTwelveAreACrowdAndTheLeastEarningLeaves() {
    Judgement judgement = Lineups.judge(kit(CROWDED));
    Lopsided crowd = only(judgement, Lopsided.Side.CROWDED);
    assertThat(crowd.group()).contains(HueGroup.YELLOWS);
    assertThat(crowd.paintIds()).containsExactly("PY154", "PY65", "PY3", "PY83", "PY175");
    assertThat(crowd.paints()).isEqualTo(12);
    String least =
        judgement.earnings().stream()
            .filter(earning -> crowd.paintIds().contains(earning.paintId()))
            .min(Comparator.comparingDouble(Earning::total))
            .orElseThrow()
            .paintId();
    int well = List.of(CROWDED).indexOf(least);
    assertThat(crowd.cure()).contains(new Edit.EmptyWell(Lineups.ID, "w" + well));
  }

  /** The blue on the shelf that adds most to the ring, by judging a box with each. */
  @Test
  void aBoxWithoutBlueGetsTheBestOfTheShelf() {
    List<String> blues = List.of("PB29", "PB15:3", "PB28");
    String[] box = {"PY154", "PR254", "PV19", "PG7", "PY43", "PBr7"};
    Kit kit =
        Lineups.kit(
            Lineups.paints(
                "PY154", "PR254", "PV19", "PG7", "PY43", "PBr7", "PB29", "PB15:3", "PB28"),
            7,
            box);
    Lopsided missing = only(Lineups.judge(kit), Lopsided.Side.MISSING);
    String best =
        blues.stream()
            .max(
                Comparator.comparingDouble(
                    blue ->
                        Lineups.judge(new Edit.PlacePaint(Lineups.ID, "w6", blue).apply(kit))
                            .ring()
                            .sum()))
            .orElseThrow();
    assertThat(missing.group()).contains(HueGroup.BLUES);
    assertThat(missing.count()).isZero();
    assertThat(missing.change().arrivingId()).contains(best);
    assertThat(missing.cure()).contains(new Edit.PlacePaint(Lineups.ID, "w6", best));
  }

  /** PB15:3 and PB35 lean to green, ultramarine to violet (common practice). */
  @Test
  void twoBluesThatLeanToGreenWantOneThatDoesNot() {
    String[] box = {"PY154", "PR254", "PV19", "PB15:3", "PB35", "PBr7"};
    Kit kit =
        Lineups.kit(
            Lineups.paints("PY154", "PR254", "PV19", "PB15:3", "PB35", "PBr7", "PB29"), 6, box);
    Lopsided leaning = only(Lineups.judge(kit), Lopsided.Side.LEANING);
    assertThat(leaning.lean()).contains(HueFamily.GREEN);
    assertThat(leaning.paintIds()).containsExactly("PB15:3", "PB35");
    assertThat(leaning.change().arrivingId()).contains("PB29");
  }

  @Test
  void bluesOfBothSidesAreNotLopsided() {
    assertThat(Lineups.judge(kit("PY154", "PR254", "PV19", "PB15:3", "PB29", "PBr7")).findings())
        .noneMatch(f -> f instanceof Lopsided l && l.side() == Lopsided.Side.LEANING);
  }

  /** Four cadmiums of six hide; the nearest clear neighbour by mean ΔE00 is the cure. */
  @Test
  void fourOpaquePaintsOfSixAreOneTooMany() {
    String[] box = {"PY35", "PO20", "PR108", "PR101", "PB29", "PG7"};
    Lopsided opaque = only(Lineups.judge(kit(box)), Lopsided.Side.OPAQUE);
    assertThat(opaque.count()).isEqualTo(4);
    assertThat(opaque.cure()).isEqualTo(Optional.empty());
  }

  @Test
  void fivePaintsAreTooFewToJudge() {
    assertThat(Lineups.judge(kit("PY154", "PY65", "PY3", "PY83", "PY175")).findings())
        .noneMatch(Lopsided.class::isInstance);
  }

  private static Lopsided only(Judgement judgement, Lopsided.Side side) {
    List<Lopsided> found =
        judgement.findings().stream()
            .filter(Lopsided.class::isInstance)
            .map(Lopsided.class::cast)
            .filter(lopsided -> lopsided.side() == side)
            .toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Kit kit(String... ids) {
    return Lineups.kit(Lineups.paints(ids), ids.length, ids);
  }
}
