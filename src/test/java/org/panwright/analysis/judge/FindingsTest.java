package org.panwright.analysis.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.finding.Doubt;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Fading;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.NearTwins;
import org.panwright.analysis.finding.StandIn;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.mud.PairMud;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.paint.CoatReading;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Swatchbook;

/** What is told and what is not, against the definitions by brute force and common practice. */
class FindingsTest {
  private static final String[] WIDE = {
    "PY175", "PY65", "PY43", "PR254", "PV19", "PV23", "PB29", "PB28", "PB15:3", "PG7", "PBr7",
    "PY154"
  };

  @Test
  void keysAreDifferentWithinALineup() {
    for (String[] box :
        List.of(WIDE, new String[] {"PY43", "PBr7", "PR101", "PB29", "PB28", "PB35", "PY42"})) {
      List<String> keys = told(judge(box)).stream().map(Finding::key).toList();
      assertThat(keys).doesNotHaveDuplicates().isNotEmpty();
    }
  }

  @Test
  void aMutedFindingIsToldNoMoreButKeptWithItsReason() {
    Kit kit = Lineups.kit(Lineups.paints("PR108", "PB28", "PY1"), 3, "PR108", "PB28", "PY1");
    Kit muted = new Edit.MuteFinding(Lineups.ID, "fading:PY1", "sketchbooks only").apply(kit);
    Judgement judgement = Lineups.judge(muted);
    assertThat(told(judgement)).noneMatch(Fading.class::isInstance);
    assertThat(judgement.muted())
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.finding()).isInstanceOf(Fading.class);
              assertThat(m.reason()).isEqualTo("sketchbooks only");
            });
    Kit again = new Edit.TellFinding(Lineups.ID, "fading:PY1").apply(muted);
    assertThat(told(Lineups.judge(again))).isEqualTo(told(Lineups.judge(kit)));
  }

  /** Another metal is another finding; the same metal in another paint is not. */
  @Test
  void aNewMetalIsToldAlthoughTheOthersAreMuted() {
    Kit kit = Lineups.kit(Lineups.paints("PR108", "PB28"), 2, "PR108");
    Finding metals = metals(Lineups.judge(kit));
    Kit muted = new Edit.MuteFinding(Lineups.ID, metals.key(), "known").apply(kit);
    assertThat(told(Lineups.judge(muted))).noneMatch(Metals.class::isInstance);
    Kit more = new Edit.PlacePaint(Lineups.ID, "w1", "PB28").apply(muted);
    assertThat(metals(Lineups.judge(more)).paintIds()).containsExactly("PR108", "PB28");
  }

  /** Each cure leads to a lineup that can be judged, and none of the told ones needs another. */
  @Test
  void everyCureCanBeDone() {
    Kit kit = Lineups.kit(Lineups.paints(WIDE), 12, WIDE);
    for (Finding finding : told(Lineups.judge(kit))) {
      finding.cure().ifPresent(edit -> assertThat(edit.apply(kit)).isNotEqualTo(kit));
    }
  }

  @Test
  void estimatesThatAreKnownLessWellThanTheyDifferAreDoubted() {
    Judgement judgement = judge("PY154", "PY1", "PB29");
    NearTwins twins = first(NearTwins.class, judgement);
    assertThat(twins.doubt().estimates()).isEqualTo(2);
    assertThat(twins.doubt().error()).isCloseTo(9, within(1e-9));
    assertThat(twins.doubt().swallows(twins.masstone())).isTrue();
    assertThat(twins.doubt().swallows(9.5)).isFalse();
  }

  /** A green-leaning blue among earths is what greys them (common practice). */
  @Test
  void ceruleanAmongEarthsMuddiesAndAnotherBlueWouldNot() {
    String[] box = {"PY43", "PBr7", "PR101", "PB35", "PB28", "PY42"};
    List<Paint> shelf =
        Lineups.paints("PY43", "PBr7", "PR101", "PB35", "PB28", "PY42", "PB16", "PB29", "PB60");
    Kit kit = Lineups.kit(shelf, 6, box);
    Judgement judgement = Lineups.judge(kit);
    MuddyPaint muddy = first(MuddyPaint.class, judgement);
    assertThat(muddy.paintId()).isEqualTo("PB35");
    assertThat(muddy.loss())
        .isEqualTo(judgement.mud().byPaint().get("PB35"))
        .isGreaterThanOrEqualTo(MuddyPaint.TIMES_TYPICAL * muddy.typical());
    muddy
        .insteadPaintId()
        .ifPresent(
            id -> {
              Judgement healed = Lineups.judge(muddy.cure().orElseThrow().apply(kit));
              assertThat(healed.mud().byPaint().get(id))
                  .isCloseTo(muddy.insteadLoss(), within(1e-12));
            });
  }

  @Test
  void pairsThatLoseHalfTheirColourAreNamedWorstFirst() {
    Judgement judgement = judge(WIDE);
    MuddyPairs pairs = first(MuddyPairs.class, judgement);
    assertThat(pairs.pairs()).isEqualTo(judgement.mud().muddy().subList(0, pairs.pairs().size()));
    assertThat(pairs.pairs()).allMatch(pair -> pair.loss() >= 0.5 && !pair.isGrey());
    assertThat(pairs.greys()).allMatch(PairMud::isGrey);
  }

  /** Against mixing every pair wet and dry. */
  @Test
  void darksThatDryToGreyAreThoseOfTheDefinition() {
    Judgement judgement = judge(WIDE);
    DriesGrey grey = first(DriesGrey.class, judgement);
    Mixer mixer = new Mixer(judgement.table());
    List<Double> wet = new ArrayList<>();
    for (int i = 0; i < WIDE.length; i++) {
      for (int j = i; j < WIDE.length; j++) {
        darkest(mixer, WIDE[i], WIDE[j]).stream().mapToObj(l -> l).forEach(wet::add);
      }
    }
    wet.sort(Double::compare);
    assertThat(grey.deceivers().get(0).wetL()).isCloseTo(wet.get(0), within(1e-6));
    assertThat(grey.deceivers()).allMatch(Dark::fadesOnDrying);
    assertThat(grey.stays().isReal()).isTrue();
  }

  /** Every paint read 1 darker while wet: so is the darkest mix, whatever it is made of. */
  @Test
  void aDarkIsWetAsItsPaintsWereRead() {
    List<Paint> read =
        Lineups.paints(WIDE).stream().map(paint -> paint.withSwatchbook(oneDarkerWet())).toList();
    Dark darkest = Lineups.judge(Lineups.kit(read, WIDE.length, WIDE)).darkest().orElseThrow();
    assertThat(darkest.wetL()).isCloseTo(darkest.dryL() - 1, within(1e-9));
  }

  private static Swatchbook oneDarkerWet() {
    CoatReading dry = new CoatReading.OfColour(new Lab(60, 0, 0));
    PaintedCoat coat = PaintedCoat.of("a", dry, PaintedCoat.Strength.FULL);
    return Swatchbook.EMPTY.with(
        List.of(coat.withWet(new CoatReading.OfColour(new Lab(59, 0, 0)))));
  }

  /** The wet L* of the darkest deceiving ratio of a pair, if there is one. */
  private static OptionalDouble darkest(Mixer mixer, String first, String second) {
    List<Recipe> recipes =
        first.equals(second)
            ? List.of(Recipe.of(first))
            : Ratio.GRID.stream()
                .map(r -> Recipe.of(first, r.first(), second, r.second()))
                .toList();
    return recipes.stream()
        .filter(
            recipe -> {
              Lab dry = mixer.lab(recipe, 1);
              return dry.l() >= 27 && dry.chroma() < 12;
            })
        .mapToDouble(r -> Light.D65.lab(mixer.wet(r, 1)).l())
        .filter(l -> l < 25)
        .min();
  }

  /** PY53, PY35 and PBr24 cover in the trade's judgement, PY154 and PB29 do not. */
  @Test
  void lightsThatHideAreRemarkedOn() {
    Judgement judgement = judge("PY53", "PY35", "PBr24", "PY154", "PB29");
    assertThat(told(judgement))
        .contains(
            new Nature(
                Nature.Effect.HIDING_LIGHT, List.of("PY53", "PY35", "PBr24"), Optional.empty()));
  }

  @Test
  void anEarthThatCanBeMixedMattersHalfAsMuch() {
    Doubt doubt = new Doubt(9, 2);
    Recipe recipe = Recipe.of("a", 1, "b", 1);
    StandIn plain = new StandIn("c", recipe, 1.5, 1, doubt, false, Optional.empty());
    StandIn handy = new StandIn("c", recipe, 1.5, 1, doubt, true, Optional.empty());
    assertThat(plain.severity()).isCloseTo(0.18, within(1e-12));
    assertThat(handy.severity()).isCloseTo(0.09, within(1e-12));
  }

  private static Finding metals(Judgement judgement) {
    return first(Metals.class, judgement);
  }

  private static <F extends Finding> F first(Class<F> kind, Judgement judgement) {
    return told(judgement).stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + kind + " in " + told(judgement)));
  }

  private static List<Finding> told(Judgement judgement) {
    return judgement.findings();
  }

  private static Judgement judge(String... box) {
    return Lineups.judge(
        Lineups.kit(Arrays.stream(box).map(Lineups::paint).toList(), box.length, box));
  }
}
