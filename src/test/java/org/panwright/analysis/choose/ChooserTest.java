package org.panwright.analysis.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.balance.HueGroup;
import org.panwright.kit.Kit;
import org.panwright.kit.PaintRules;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;

class ChooserTest {
  private static final List<String> CODES =
      List.of(
          "PY175", "PY65", "PY154", "PO73", "PR254", "PR122", "PV19", "PV23", "PB29", "PB15:3",
          "PB28", "PG7", "PBr7", "PY43", "PR108");

  private final Chooser chooser = new Chooser(Lineups.LIBRARY);

  @Test
  void proposalsKeepToTheConditionsAndToTheirDistance() {
    Conditions conditions =
        Conditions.of(5, 2)
            .withMust(Set.of("PB29"))
            .withNever(Set.of("PG7"))
            .withMostOfAGroup(Optional.of(2));
    Choice choice = choose(conditions);

    assertThat(choice.proposals()).hasSize(Chooser.PROPOSALS);
    for (Proposal proposal : choice.proposals()) {
      assertThat(proposal.pans()).hasSize(5);
      assertThat(proposal.dabs()).hasSize(2);
      assertThat(proposal.paints()).contains("PB29").doesNotContain("PG7").doesNotHaveDuplicates();
      assertThat(proposal.paints().stream().filter(id -> id.startsWith("PY")).count())
          .isLessThanOrEqualTo(3);
    }
    for (Proposal one : choice.proposals()) {
      for (Proposal other : choice.proposals()) {
        Set<String> common = new HashSet<>(one.paints());
        common.retainAll(other.paints());
        assertThat(one.equals(other) || common.size() <= 7 - choice.apart()).isTrue();
      }
    }
  }

  @Test
  void theBestOfFewIsProvenAndTheOthersAreWorthNoMore() {
    Choice choice = choose(Conditions.of(6, 0));
    Proposal best = choice.proposals().get(0);

    assertThat(best.provenBest()).isTrue();
    assertThat(best.bound()).isEqualTo(best.worth());
    assertThat(choice.proposals()).allMatch(proposal -> proposal.worth() <= best.bound());
    assertThat(best.reasons()).allMatch(reason -> reason.insteadLost() >= -1e-12);
  }

  /** Each proposal against every lineup of four of nine that differs enough from those before. */
  @Test
  void eachProposalIsTheBestThatDiffersFromThoseBefore() {
    List<String> nine = CODES.subList(0, 9);
    Kit kit = Lineups.kit(Lineups.paints(nine.toArray(String[]::new)), 4);
    Choice choice = chooser.choose(kit, Conditions.of(4, 0), () -> false, p -> {});
    assertThat(choice.proposals()).hasSize(3).allMatch(Proposal::provenBest);
    for (int i = 0; i < 3; i++) {
      List<Proposal> before = choice.proposals().subList(0, i);
      double best =
          fours(nine).stream()
              .filter(
                  four ->
                      before.stream().allMatch(p -> 4 - common(p.paints(), four) >= choice.apart()))
              .mapToDouble(four -> worth(kit, four))
              .max()
              .orElseThrow();
      assertThat(choice.proposals().get(i).worth()).isEqualTo(best);
      assertThat(choice.proposals().get(i).bound()).isEqualTo(best);
    }
  }

  /** All rules together, against every lineup of four that keeps to them. */
  @Test
  void allRulesTogetherLeaveTheBestThatKeepsToThem() {
    List<Paint> shelf = new ArrayList<>(Lineups.paints(CODES.toArray(String[]::new)));
    shelf.add(Lineups.paint("PR255", Ownership.WISHED));
    shelf.add(Lineups.paint("PY1"));
    Kit kit = Lineups.kit(shelf, 4);
    Conditions conditions =
        Conditions.of(3, 1)
            .withMust(Set.of("PB29"))
            .withNever(Set.of("PG7", "PB15:3", "PY154", "PO73", "PV19", "PY43"))
            .withMostOfAGroup(Optional.of(1))
            .withRules(new PaintRules(true, true, true, Optional.of(Lightfastness.II)));
    Choice choice = chooser.choose(kit, conditions, () -> false, p -> {});
    Proposal best = choice.proposals().get(0);

    // PR108 holds cadmium, PY1 fades, PR255 is not owned, PB28 is a second blue (common practice).
    assertThat(best.paints())
        .contains("PB29")
        .doesNotContain("PR108", "PY1", "PR255", "PB28", "PG7")
        .hasSize(4);
    assertThat(best.provenBest()).isTrue();
    List<String> allowed = List.of("PB29", "PY175", "PY65", "PR254", "PR122", "PV23", "PBr7");
    for (List<String> four : fours(allowed)) {
      Choice one = chooser.choose(kit, conditions.withMust(Set.copyOf(four)), () -> false, p -> {});
      boolean keeps = four.contains("PB29") && one.contradictions().isEmpty();
      assertThat(keeps && one.proposals().get(0).worth() > best.worth() + 1e-12).isFalse();
    }
  }

  @Test
  void theSameConditionsGiveTheSameChoice() {
    Conditions conditions = Conditions.of(6, 1);
    assertThat(choose(conditions)).isEqualTo(choose(conditions));
  }

  /** Phthalo blue is many times stronger than ochre (common practice), so less of it is used up. */
  @Test
  void aStrongPaintGoesToTheDabBeforeAWeakOne() {
    Kit kit = Lineups.kit(Lineups.paints("PB15:3", "PY43"), 2);
    Proposal only =
        chooser.choose(kit, Conditions.of(1, 1), () -> false, progress -> {}).proposals().get(0);

    assertThat(only.dabs()).containsExactly("PB15:3");
    assertThat(only.pans()).containsExactly("PY43");
  }

  @Test
  void rulesKeepPaintsOut() {
    Conditions conditions =
        Conditions.of(8, 0)
            .withRules(new PaintRules(true, true, true, Optional.of(Lightfastness.II)));
    Choice choice = choose(conditions);

    assertThat(choice.proposals().get(0).paints()).doesNotContain("PR108");
  }

  @Test
  void contradictionsSayWhatStandsAgainstWhat() {
    assertThat(choose(Conditions.of(0, 0)).contradictions())
        .containsExactly(new Contradiction.NoPlaces());
    assertThat(choose(Conditions.of(16, 0)).contradictions())
        .containsExactly(new Contradiction.ShelfTooSmall(15, 16));
    Set<String> blue = Set.of("PB29");
    assertThat(choose(Conditions.of(3, 0).withMust(blue).withNever(blue)).contradictions())
        .containsExactly(new Contradiction.MustAndNever("PB29"));
    assertThat(choose(Conditions.of(1, 0).withMust(Set.of("PB29", "PG7"))).contradictions())
        .containsExactly(new Contradiction.MoreMustsThanPlaces(2, 1));
    assertThat(
            choose(
                    Conditions.of(3, 0)
                        .withMust(Set.of("PB29", "PB28"))
                        .withMostOfAGroup(Optional.of(1)))
                .contradictions())
        .containsExactly(new Contradiction.MoreMustsThanLimit(HueGroup.BLUES, 2, 1));
    assertThat(choose(Conditions.of(9, 0).withMostOfAGroup(Optional.of(1))).contradictions())
        .hasOnlyElementsOfType(Contradiction.LimitTooTight.class)
        .hasSize(1);
    assertThat(
            choose(
                    Conditions.of(3, 0)
                        .withMust(Set.of("PR108"))
                        .withRules(new PaintRules(true, false, true, Optional.empty())))
                .contradictions())
        .containsExactly(new Contradiction.MustHoldsCadmium("PR108"));
  }

  /** PY1 fades (ASTM D4303 category III or worse: common practice). */
  @Test
  void severalContradictionsAreAllTold() {
    Paint mixed = mixed("mixed", "PG7", 0.5, "PY154");
    Kit kit = Lineups.kit(List.of(mixed, Lineups.paint("PY1"), Lineups.paint("PB29")), 2);
    Conditions conditions =
        Conditions.of(2, 0)
            .withMust(Set.of("mixed", "PY1", "PB29"))
            .withNever(Set.of("PB29"))
            .withRules(new PaintRules(true, true, true, Optional.of(Lightfastness.II)));
    List<Contradiction> told =
        chooser.choose(kit, conditions, () -> false, p -> {}).contradictions();

    assertThat(told)
        .contains(
            new Contradiction.MustIsMixed("mixed"),
            new Contradiction.MustAndNever("PB29"),
            new Contradiction.MoreMustsThanPlaces(3, 2),
            new Contradiction.TooFewAllowed(0, 3, 2))
        .anyMatch(c -> c instanceof Contradiction.MustFades fades && fades.paintId().equals("PY1"));
  }

  /** Fifty yellows that all differ a little and ten blues all alike: a limit of six needs six. */
  @Test
  void aLimitOnGroupsIsKeptOnAVeryLargeShelfToo() {
    List<Paint> shelf = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      shelf.add(mixed("yellow" + i, "PY154", (i + 1) / 60.0, "PY65"));
    }
    for (int i = 0; i < 10; i++) {
      shelf.add(Lineups.paint("PB29").withId("blue" + i));
    }
    Conditions conditions = Conditions.of(8, 0).withMostOfAGroup(Optional.of(4));
    Choice choice = chooser.choose(Lineups.kit(shelf, 8), conditions, () -> false, p -> {});

    assertThat(choice.contradictions()).isEmpty();
    assertThat(choice.proposals().get(0).paints())
        .filteredOn(id -> id.startsWith("blue"))
        .hasSize(4);
  }

  @Test
  void aPaintThatIsNotOwnedMustBeAllowedFirst() {
    List<Paint> shelf = List.of(Lineups.paint("PB29"), Lineups.paint("PG7", Ownership.WISHED));
    Conditions conditions = Conditions.of(1, 0).withMust(Set.of("PG7"));
    Kit kit = Lineups.kit(shelf, 1);

    assertThat(chooser.choose(kit, conditions, () -> false, p -> {}).contradictions())
        .containsExactly(new Contradiction.MustIsNotOwned("PG7"));
    Conditions any = conditions.withRules(new PaintRules(false, false, false, Optional.empty()));
    assertThat(chooser.choose(kit, any, () -> false, p -> {}).proposals()).hasSize(1);
  }

  @Test
  void onePaintAndPaintsAllAlikeAreChosenFromLikeAnyOther() {
    Kit one = Lineups.kit(Lineups.paints("PB29"), 1);
    assertThat(chooser.choose(one, Conditions.of(1, 0), () -> false, p -> {}).proposals())
        .hasSize(1);
    List<Paint> twins = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      twins.add(Lineups.paint("PB29").withId("blue" + i));
    }
    Choice choice =
        chooser.choose(Lineups.kit(twins, 3), Conditions.of(3, 0), () -> false, p -> {});
    assertThat(choice.proposals().get(0).worth()).isEqualTo(1);
    assertThat(choice.proposals().get(0).provenBest()).isTrue();
  }

  @Test
  void ofAVeryLargeShelfTheMostUnlikeAreLookedAt() {
    List<Paint> many = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      many.add(Lineups.paint(CODES.get(i % CODES.size())).withId("p" + i));
    }
    Choice choice = chooser.choose(Lineups.kit(many, 4), Conditions.of(4, 0), () -> false, p -> {});

    assertThat(choice.allowed()).isEqualTo(200);
    assertThat(choice.considered()).isEqualTo(Chooser.MOST_CONSIDERED);
    assertThat(choice.proposals().get(0).provenBest()).isFalse();
    assertThat(choice.proposals().get(0).bound()).isEqualTo(1);
  }

  @Test
  void whatIsBestSoFarIsToldWhileItRuns() {
    List<Chooser.Progress> told = new ArrayList<>();
    Choice choice = chooser.choose(kit(), Conditions.of(6, 0), () -> false, told::add);

    assertThat(told).isNotEmpty();
    assertThat(told.get(told.size() - 1).best())
        .containsExactlyInAnyOrderElementsOf(choice.proposals().get(0).paints());
    assertThat(told).extracting(Chooser.Progress::worth).isSorted();
  }

  @Test
  void aChoiceNoLongerWantedStops() {
    assertThatThrownBy(() -> chooser.choose(kit(), Conditions.of(6, 0), () -> true, p -> {}))
        .isInstanceOf(CancellationException.class);
  }

  private static Paint mixed(String id, String first, double share, String second) {
    List<PigmentShare> shares =
        List.of(
            new PigmentShare(PigmentName.parse(first), share),
            new PigmentShare(PigmentName.parse(second), 1 - share));
    return new Paint(
        id, id, "", shares, Lineups.paint(first).handling(), Ownership.OWNED, Optional.empty(), "");
  }

  private static List<List<String>> fours(List<String> of) {
    List<List<String>> fours = new ArrayList<>();
    for (int set = 0; set < 1 << of.size(); set++) {
      if (Integer.bitCount(set) == 4) {
        List<String> four = new ArrayList<>();
        for (int i = 0; i < of.size(); i++) {
          if ((set >>> i & 1) != 0) {
            four.add(of.get(i));
          }
        }
        fours.add(four);
      }
    }
    return fours;
  }

  private static long common(List<String> one, List<String> other) {
    return one.stream().filter(other::contains).count();
  }

  /** The worth of one lineup: the choice that has no choice. */
  private double worth(Kit kit, List<String> paints) {
    Conditions only = Conditions.of(paints.size(), 0).withMust(Set.copyOf(paints));
    return chooser.choose(kit, only, () -> false, p -> {}).proposals().get(0).worth();
  }

  private Choice choose(Conditions conditions) {
    return chooser.choose(kit(), conditions, () -> false, progress -> {});
  }

  private static Kit kit() {
    return Lineups.kit(Lineups.paints(CODES.toArray(String[]::new)), 12);
  }
}
