package org.panwright.analysis.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.colour.Lab;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** The walk against {@link Mixer}, one mix at a time. */
class NetTest {
  private static final OpticsTable TABLE =
      OpticsTable.of(
          Lineups.paints("PY154", "PR254", "PB29", "PBr7", "PW6"), Lineups.LIBRARY, Paper.WHITE);
  private static final WashStrengths WASHES = WashStrengths.USUAL;

  /** n(5 + 35(n−1)/2 + 20(n−1)(n−2)/6) by hand. */
  @ParameterizedTest
  @CsvSource({"0, 0", "1, 5", "2, 45", "3, 140", "12, 6770", "20, 29550"})
  void hasThisManyCoats(int paints, long coats) {
    assertThat(Net.coats(paints)).isEqualTo(coats);
  }

  @Test
  void visitsEveryMixOnceWithTheMixersColour() {
    Mixer mixer = new Mixer(TABLE);
    Set<String> visited = new HashSet<>();
    new NetWalk(TABLE, WASHES, () -> false)
        .all(
            new int[] {0, 1, 2, 3, 4},
            new Net.Sink() {
              @Override
              public void single(int paint, double[] colours) {
                check(colours, 0, List.of(portion(paint, 1)));
              }

              @Override
              public void pair(int first, int second, double[] colours) {
                for (int i = 0; i < Ratio.GRID.size(); i++) {
                  Ratio ratio = Ratio.GRID.get(i);
                  check(
                      colours,
                      i + 1,
                      List.of(portion(first, ratio.first()), portion(second, ratio.second())));
                }
              }

              @Override
              public void triad(int first, int second, int third, double[] colours) {
                for (int i = 0; i < Net.TRIADS.size(); i++) {
                  Net.Triad parts = Net.TRIADS.get(i);
                  check(
                      colours,
                      i,
                      List.of(
                          portion(first, parts.first()),
                          portion(second, parts.second()),
                          portion(third, parts.third())));
                }
              }

              private void check(double[] colours, int mix, List<Portion> portions) {
                for (Wash wash : Wash.values()) {
                  Lab expected = mixer.lab(new Recipe(portions), WASHES.load(wash));
                  int at = mix * Net.MIX + wash.ordinal() * Net.COLOUR;
                  assertThat(colours[at]).isCloseTo(expected.l(), within(1e-8));
                  assertThat(colours[at + 1]).isCloseTo(expected.a(), within(1e-8));
                  assertThat(colours[at + 2]).isCloseTo(expected.b(), within(1e-8));
                  assertThat(visited.add(portions + " " + wash)).isTrue();
                }
              }
            });
    assertThat(visited).hasSize((int) Net.coats(5));
  }

  @Test
  void theMixesWithOnePaintCompleteTheNetOfTheOthers() {
    NetWalk walk = new NetWalk(TABLE, WASHES, () -> false);
    Reach.Gatherer whole = new Reach.Gatherer();
    walk.all(new int[] {0, 1, 2, 3, 4}, whole);
    Reach.Gatherer grown = new Reach.Gatherer();
    walk.all(new int[] {0, 1, 2, 3}, grown);
    walk.with(4, new int[] {0, 1, 2, 3}, grown);
    assertThat(grown.reach()).isEqualTo(whole.reach());
  }

  @Test
  void stopsWithinARow() {
    AtomicInteger asked = new AtomicInteger();
    NetWalk walk = new NetWalk(TABLE, WASHES, () -> asked.incrementAndGet() > 2);
    List<Integer> singles = new ArrayList<>();
    Net.Sink counting =
        new Net.Sink() {
          @Override
          public void single(int paint, double[] colours) {
            singles.add(paint);
          }

          @Override
          public void pair(int first, int second, double[] colours) {}

          @Override
          public void triad(int first, int second, int third, double[] colours) {}
        };
    assertThatThrownBy(() -> walk.all(new int[] {0, 1, 2, 3, 4}, counting))
        .isInstanceOf(CancellationException.class);
    assertThat(singles).containsExactly(0, 1);
  }

  private static Portion portion(int paint, double parts) {
    return new Portion(TABLE.ids().get(paint), parts);
  }
}
