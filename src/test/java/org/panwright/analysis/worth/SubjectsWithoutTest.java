package org.panwright.analysis.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.reach.Nearness;
import org.panwright.analysis.reach.Net;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** A case solved by hand, and brute force: the net walked again without each paint. */
class SubjectsWithoutTest {
  private static final String[] IDS = {"PY154", "PR122", "PR254", "PB29", "PB15:3", "PBr7"};
  private static final OpticsTable TABLE =
      OpticsTable.of(Lineups.paints(IDS), Lineups.LIBRARY, Paper.WHITE);
  private static final int[] ALL = IntStream.range(0, IDS.length).toArray();
  private static final NetWalk WALK = new NetWalk(TABLE, WashStrengths.USUAL, () -> false);

  /**
   * By hand: a yellow's wash, a blue's, and their green, each on the net, so near = 12 for each. No
   * wash of one comes within 12 of the other or of the green. Without either its wash and the green
   * are lost: 24 of 36.
   */
  @Test
  void twoPaintsAndTheirThreeColours() {
    Judgement judgement = Lineups.judge(going(wash(Recipe.of("PY154")), "PY154", "PB15:3"));
    assertThat(judgement.earnings().get(0).subjects().share()).isCloseTo(1, within(1e-9));
    assertThat(judgement.earnings().get(1).subjects()).isEqualTo(SubjectsLost.NONE);

    Kit three =
        with(
            going(wash(Recipe.of("PY154")), "PY154", "PB15:3"),
            new SubjectColour("yellow", wash(Recipe.of("PY154"))),
            new SubjectColour("blue", wash(Recipe.of("PB15:3"))),
            new SubjectColour("green", wash(Recipe.of("PY154", 1, "PB15:3", 1))));
    for (Earning earning : Lineups.judge(three).earnings()) {
      assertThat(earning.subjects().share()).isCloseTo(2.0 / 3, within(1e-9));
      assertThat(earning.subjects().by()).isCloseTo(12, within(1e-9));
    }
  }

  /** A paint that earns nothing but a colour of the place is no passenger; by the definition. */
  @Test
  void aPaintTheColoursNeedIsNoPassenger() {
    Earning nothing = new Earning("a", 0, 0, SubjectsLost.NONE);
    Earning colour = new Earning("a", 0, 0, new SubjectsLost(0.05, "gorse", 1));
    assertThat(nothing.isPassenger()).isTrue();
    assertThat(nothing.isLittle()).isTrue();
    assertThat(colour.isPassenger()).isFalse();
    assertThat(colour.isLittle()).isFalse();
    assertThat(colour.total()).isEqualTo(0.05);
  }

  @Test
  void coloursOfOutingsThatTakeAnotherLineupDoNotCount() {
    Kit kit = going(wash(Recipe.of("PY154")), "PY154", "PB15:3");
    Outing outing = kit.outings().get(0).withLineup(Optional.empty());
    Judgement judgement = Lineups.judge(new Edit.ChangeOuting(outing).apply(kit));
    assertThat(judgement.earnings())
        .allMatch(earning -> earning.subjects().equals(SubjectsLost.NONE));
  }

  @Test
  void isTheNetWithoutThatPaint() {
    List<SubjectColour> subjects = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double hue = Math.toRadians(30 * i);
      Lab lab = new Lab(25 + 5 * i, 35 * Math.cos(hue), 35 * Math.sin(hue));
      subjects.add(new SubjectColour("colour " + i, lab));
    }
    SubjectsWithout without = new SubjectsWithout(subjects, ALL, TABLE.size());
    WALK.all(IntStream.range(0, 5).toArray(), without);
    SubjectsWithout led = without.copy();
    WALK.with(5, IntStream.range(0, 5).toArray(), led);
    double all = near(subjects, ALL);
    for (int member : ALL) {
      double left = near(subjects, IntStream.of(ALL).filter(m -> m != member).toArray());
      assertThat(led.lost(member).share()).isCloseTo(1 - left / all, within(1e-12));
    }
    assertThat(without.lost(5)).isEqualTo(SubjectsLost.NONE);
  }

  private static double near(List<SubjectColour> subjects, int[] paints) {
    double near = 0;
    for (SubjectColour subject : subjects) {
      Nearness nearness = new Nearness(subject.lab());
      double[] least = {144};
      WALK.all(
          paints,
          new Net.Sink() {
            @Override
            public void single(int paint, double[] colours) {
              look(colours, 1);
            }

            @Override
            public void pair(int first, int second, double[] colours) {
              look(colours, Net.PATH);
            }

            @Override
            public void triad(int first, int second, int third, double[] colours) {
              look(colours, Net.TRIADS.size());
            }

            private void look(double[] colours, int mixes) {
              for (int at = 0; at < mixes * Net.MIX; at += Net.COLOUR) {
                double away = nearness.squared(colours[at], colours[at + 1], colours[at + 2]);
                least[0] = Math.min(least[0], away);
              }
            }
          });
      near += 12 - Math.sqrt(least[0]);
    }
    return near;
  }

  private static Lab wash(Recipe recipe) {
    return new Mixer(TABLE).lab(recipe, WashStrengths.USUAL.load(Wash.MILK));
  }

  private static Kit going(Lab subject, String... box) {
    Kit kit = Lineups.kit(Lineups.paints(IDS), box.length, box);
    return new Edit.AddOuting(
            new Outing(
                "outing",
                "outing",
                Optional.empty(),
                "",
                Optional.of(Lineups.ID),
                2,
                1,
                List.of(new SubjectColour("colour", subject))))
        .apply(kit);
  }

  private static Kit with(Kit kit, SubjectColour... subjects) {
    return new Edit.SetSubjects("outing", List.of(subjects)).apply(kit);
  }
}
