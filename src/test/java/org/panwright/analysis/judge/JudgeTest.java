package org.panwright.analysis.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.finding.EmptyLineup;
import org.panwright.analysis.finding.Fading;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.finding.NoDark;
import org.panwright.analysis.finding.Passenger;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.reach.HueArc;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.worth.Earning;
import org.panwright.analysis.worth.ShelfFigures;
import org.panwright.analysis.worth.SubjectsLost;
import org.panwright.colour.Hue;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;

/**
 * Lineups whose faults any painter would name (common practice), and the definitions by brute
 * force.
 */
class JudgeTest {
  private static final List<Paint> SHELF =
      Lineups.paints(
          "PY175", "PY65", "PR254", "PR122", "PV23", "PB29", "PB15:3", "PG7", "PY43", "PBr7");

  @Test
  void aBoxWithoutRoseOrVioletMissesThem() {
    Kit kit = Lineups.kit(SHELF, 6, "PY175", "PY65", "PB15:3", "PG7", "PY43", "PBr7");
    HueGap worst = gaps(Lineups.judge(kit)).get(0);
    assertThat(Hue.arc(worst.fromDeg(), 330)).isLessThan(worst.arcDeg());
    assertThat(worst.suggestPaintId().orElseThrow()).isIn("PR122", "PV23");
    assertThat(worst.best()).isLessThan(0.65 * worst.possible());
    assertThat(worst.severity()).isBetween(0.35, 1.0);
  }

  @Test
  void aCleanTriadHasNoGapAgainstItself() {
    List<Paint> three = Lineups.paints("PY154", "PV19", "PB15:3");
    Judgement judgement = Lineups.judge(Lineups.kit(three, 3, "PY154", "PV19", "PB15:3"));
    assertThat(gaps(judgement)).isEmpty();
    assertThat(judgement.ring()).isEqualTo(judgement.shelfRing());
    assertThat(judgement.reach()).isEqualTo(judgement.shelfReach());
  }

  @Test
  void aLineupOfTheWholeShelfReachesWhatTheShelfDoes() {
    String[] ids = {"PY154", "PV19", "PB15:3"};
    Judgement part = Lineups.judge(Lineups.kit(Lineups.paints(ids), 3, "PY154", "PV19"));
    Judgement whole = Lineups.judge(Lineups.kit(Lineups.paints(ids), 3, ids));
    assertThat(whole.shelfRing()).isEqualTo(part.shelfRing());
    assertThat(whole.shelfReach()).isEqualTo(part.shelfReach());
  }

  @Test
  void theCureIsTheExchangeThatLosesLeastByBruteForce() {
    Kit kit = Lineups.kit(SHELF, 6, "PY175", "PY65", "PB15:3", "PG7", "PY43", "PBr7");
    HueGap gap = gaps(Lineups.judge(kit)).get(0);
    String added = gap.suggestPaintId().orElseThrow();
    Kit after = gap.cure().orElseThrow().apply(kit);
    Judgement healed = Lineups.judge(after);
    assertThat(healed.grid().size()).isEqualTo(6);
    double least = Double.POSITIVE_INFINITY;
    String leaving = "";
    for (int well = 0; well < 6; well++) {
      String held = kit.lineups().get(0).in("w" + well).orElseThrow().paintId();
      Judgement trial =
          Lineups.judge(new Edit.PlacePaint(Lineups.ID, "w" + well, added).apply(kit));
      // Both shares are against the same whole, so their order is that of this sum.
      double loss =
          -trial.ring().sum() / whole(kit, added).ring().sum()
              - (double) trial.reach().size() / whole(kit, added).reach().size();
      if (loss < least) {
        least = loss;
        leaving = held;
      }
    }
    assertThat(gap.giveUpPaintId()).contains(leaving);
    assertThat(healed.ring().sum()).isGreaterThan(Lineups.judge(kit).ring().sum());
  }

  /** Lineup and new paint together. */
  private static ShelfFigures whole(Kit kit, String added) {
    OpticsTable table = OpticsTable.of(SHELF, Lineups.LIBRARY, kit.paper());
    List<String> ids = new ArrayList<>(kit.lineups().get(0).paintIds(kit.boxes().get(0)));
    ids.add(added);
    NetWalk walk = new NetWalk(table, kit.washes(), () -> false);
    return ShelfFigures.of(walk, table, kit.washes(), ids, ids);
  }

  @Test
  void theSuggestionClosesMostByBruteForce() {
    Kit kit = Lineups.kit(SHELF, 7, "PY175", "PY65", "PB15:3", "PG7", "PY43", "PBr7");
    Judgement before = Lineups.judge(kit);
    double[] has = HueArc.closed(before.ring().toArray());
    double[] wanted = HueArc.closed(before.shelfRing().toArray());
    for (HueGap gap : gaps(before)) {
      HueArc arc =
          HueArc.missing(has, wanted).stream()
              .filter(a -> a.fromDeg() == gap.fromDeg())
              .findFirst()
              .orElseThrow();
      String best =
          SHELF.stream()
              .map(Paint::id)
              .filter(id -> !kit.lineups().get(0).paintIds(kit.boxes().get(0)).contains(id))
              .max(
                  Comparator.comparingDouble(
                      id ->
                          arc.closes(
                              has,
                              HueArc.closed(
                                  Lineups.judge(
                                          new Edit.PlacePaint(Lineups.ID, "w6", id).apply(kit))
                                      .ring()
                                      .toArray()),
                              wanted)))
              .orElseThrow();
      assertThat(gap.suggestPaintId()).contains(best);
      assertThat(gap.giveUpPaintId()).isEmpty();
      assertThat(gap.cure()).contains(new Edit.PlacePaint(Lineups.ID, "w6", best));
    }
    assertThat(gaps(before)).isNotEmpty();
  }

  @Test
  void aPaintInTwoWellsGivesUpTheSecond() {
    Kit kit = Lineups.kit(SHELF, 4, "PY175", "PB15:3", "PY43", "PB15:3");
    HueGap gap = gaps(Lineups.judge(kit)).get(0);
    assertThat(gap.giveUpPaintId()).contains("PB15:3");
    assertThat(gap.cure())
        .contains(new Edit.PlacePaint(Lineups.ID, "w3", gap.suggestPaintId().orElseThrow()));
  }

  @Test
  void wishedPaintsAreNoMeasure() {
    List<Paint> shelf = new ArrayList<>(Lineups.paints("PY154", "PB15:3"));
    shelf.add(Lineups.paint("PR122", Ownership.WISHED));
    Judgement judgement = Lineups.judge(Lineups.kit(shelf, 3, "PY154", "PB15:3"));
    assertThat(gaps(judgement)).isEmpty();
    Judgement inBox = Lineups.judge(Lineups.kit(shelf, 3, "PY154", "PR122"));
    assertThat(inBox.shelfRing().sum()).isGreaterThan(judgement.shelfRing().sum());
  }

  @Test
  void anEmptyLineupSaysSo() {
    Judgement judgement = Lineups.judge(Lineups.kit(SHELF, 6));
    assertThat(judgement.findings()).containsExactly(new EmptyLineup(false));
    assertThat(judgement.ring().sum()).isZero();
    assertThat(judgement.reach().size()).isZero();
    assertThat(judgement.darkest()).isEmpty();
    assertThat(judgement.shelfRing().sum()).isPositive();
  }

  @Test
  void anEmptyShelfSaysSo() {
    Judgement judgement = Lineups.judge(Lineups.kit(List.of(), 6));
    assertThat(judgement.findings()).containsExactly(new EmptyLineup(true));
    assertThat(judgement.shelfReach().size()).isZero();
  }

  @Test
  void onePaintEarnsEverything() {
    Judgement judgement = Lineups.judge(Lineups.kit(SHELF, 6, "PB29"));
    assertThat(judgement.earnings()).containsExactly(new Earning("PB29", 1, 1, SubjectsLost.NONE));
    assertThat(gaps(judgement)).isNotEmpty();
  }

  @Test
  void paintsAllAlikeAreTwinsOfOneAnother() {
    List<Paint> alike =
        IntStream.range(0, 4)
            .mapToObj(i -> Lineups.paint("PB29").withId("blue" + i).withName("blue " + i))
            .toList();
    Judgement judgement = Lineups.judge(Lineups.kit(alike, 4, "blue0", "blue1", "blue2", "blue3"));
    assertThat(judgement.findings()).filteredOn(f -> f instanceof NearTwins).hasSize(3);
    assertThat(judgement.findings()).noneMatch(f -> f instanceof HueGap);
    assertThat(judgement.findings()).noneMatch(f -> f instanceof Passenger);
    NearTwins first =
        (NearTwins)
            judgement.findings().stream()
                .filter(NearTwins.class::isInstance)
                .findFirst()
                .orElseThrow();
    assertThat(first.masstone()).isZero();
    assertThat(first.severity()).isEqualTo(0.4);
    assertThat(first.keepPaintId()).isEqualTo("blue0");
  }

  /** PY1 fades, PY154 does not, both are middle yellows (common practice). */
  @Test
  void aFadingPaintIsExchangedForItsLightfastNeighbour() {
    List<Paint> shelf = Lineups.paints("PY1", "PY154", "PB29");
    Fading fading = only(Fading.class, Lineups.judge(Lineups.kit(shelf, 2, "PB29", "PY1")));
    assertThat(fading.paintId()).isEqualTo("PY1");
    assertThat(fading.insteadPaintId()).contains("PY154");
    assertThat(fading.instead()).isBetween(0.0, 10.0);
    assertThat(fading.cure()).contains(new Edit.PlacePaint(Lineups.ID, "w1", "PY154"));
  }

  @Test
  void aFadingPaintWithoutANeighbourHasNoCure() {
    Fading fading =
        only(Fading.class, Lineups.judge(Lineups.kit(Lineups.paints("PY1", "PB29"), 2, "PY1")));
    assertThat(fading.insteadPaintId()).isEmpty();
    assertThat(fading.cure()).isEmpty();
  }

  @Test
  void metalsAreNamedByPaint() {
    Judgement judgement =
        Lineups.judge(
            Lineups.kit(Lineups.paints("PR108", "PB28", "PB29"), 3, "PR108", "PB28", "PB29"));
    Metals metals = only(Metals.class, judgement);
    assertThat(metals.holders().get("Cd")).containsExactly("PR108");
    assertThat(metals.holders().get("Co")).containsExactly("PB28");
    assertThat(metals.holders()).doesNotContainKey("Na");
  }

  @Test
  void lightPaintsAloneMixNoDark() {
    Judgement judgement =
        Lineups.judge(
            Lineups.kit(Lineups.paints("PY154", "PY43", "PB29", "PBr7"), 4, "PY154", "PY43"));
    NoDark dark = only(NoDark.class, judgement);
    assertThat(dark.darkest().dryL()).isGreaterThan(Dark.REAL_BELOW);
    assertThat(dark.darkest().wetL()).isLessThan(dark.darkest().dryL());
  }

  @Test
  void findingsComeWorstFirst() {
    Judgement judgement =
        Lineups.judge(Lineups.kit(SHELF, 6, "PY175", "PY65", "PR122", "PG7", "PY43", "PBr7"));
    assertThat(judgement.findings().size()).isGreaterThan(2);
    assertThat(judgement.findings().stream().map(f -> -f.severity()).toList()).isSorted();
    assertThat(judgement.findings()).allSatisfy(f -> assertThat(f.severity()).isBetween(0.0, 1.0));
  }

  @Test
  void orderOfPaintsChangesNoFigure() {
    Judgement one = Lineups.judge(Lineups.kit(SHELF, 4, "PY175", "PR122", "PB29", "PBr7"));
    Judgement other = Lineups.judge(Lineups.kit(SHELF, 4, "PBr7", "PB29", "PR122", "PY175"));
    assertThat(other.reach()).isEqualTo(one.reach());
    for (int step = 0; step < Ring.STEPS; step++) {
      assertThat(other.ring().chroma(step)).isCloseTo(one.ring().chroma(step), within(1e-9));
    }
  }

  @Test
  void remembersByValueAndAnswersTheSame() {
    Judge judge = new Judge(Lineups.LIBRARY);
    Kit kit = Lineups.kit(SHELF, 4, "PY175", "PR122", "PB29");
    Judgement first = judge.judge(kit, Lineups.ID, () -> false);
    Judgement again =
        judge.judge(
            Lineups.kit(new ArrayList<>(SHELF), 4, "PY175", "PR122", "PB29"),
            Lineups.ID,
            () -> false);
    assertThat(again.table()).isSameAs(first.table());
    assertThat(again.shelfRing()).isSameAs(first.shelfRing());
    assertThat(again.findings()).isEqualTo(Lineups.judge(kit).findings());
  }

  @Test
  void stopsWhenNoLongerWanted() {
    Kit kit = Lineups.kit(SHELF, 4, "PY175", "PR122", "PB29");
    assertThatThrownBy(() -> new Judge(Lineups.LIBRARY).judge(kit, Lineups.ID, () -> true))
        .isInstanceOf(CancellationException.class);
  }

  private static List<HueGap> gaps(Judgement judgement) {
    return judgement.findings().stream()
        .filter(HueGap.class::isInstance)
        .map(HueGap.class::cast)
        .toList();
  }

  private static <F extends Finding> F only(Class<F> kind, Judgement judgement) {
    List<Finding> found = judgement.findings().stream().filter(kind::isInstance).toList();
    assertThat(found).hasSize(1);
    return kind.cast(found.get(0));
  }
}
