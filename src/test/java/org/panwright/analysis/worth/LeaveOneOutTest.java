package org.panwright.analysis.worth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;

/** Brute force: the net walked again without each paint. */
class LeaveOneOutTest {
  private static final OpticsTable TABLE =
      OpticsTable.of(
          Lineups.paints(
              "PY175", "PY154", "PR122", "PR254", "PB29", "PB15:3", "PG7", "PBr7", "PW6"),
          Lineups.LIBRARY,
          Paper.WHITE);
  private static final int[] MEMBERS = {0, 2, 3, 4, 5, 7, 8};
  private static final NetWalk WALK = new NetWalk(TABLE, WashStrengths.USUAL, () -> false);

  @Test
  void isTheNetWithoutThatPaint() {
    LeaveOneOut leaving = new LeaveOneOut(MEMBERS, TABLE.size());
    WALK.all(MEMBERS, leaving);
    assertThat(leaving.reach()).isEqualTo(bruteForce(MEMBERS).reach().size());
    for (int member = 0; member < MEMBERS.length; member++) {
      compare(leaving, member, bruteForce(without(MEMBERS, member)));
    }
  }

  @Test
  void leadOnWithAnotherPaintItIsTheLineupAfterTheExchange() {
    LeaveOneOut leaving = new LeaveOneOut(MEMBERS, TABLE.size());
    WALK.all(MEMBERS, leaving);
    LeaveOneOut trial = leaving.copy();
    WALK.with(6, MEMBERS, trial);
    for (int member = 0; member < MEMBERS.length; member++) {
      int[] others = without(MEMBERS, member);
      int[] exchanged = IntStream.concat(IntStream.of(others), IntStream.of(6)).toArray();
      compare(trial, member, bruteForce(exchanged));
      compare(leaving, member, bruteForce(others));
    }
  }

  @Test
  void withoutItsOnlyPaintNothingIsLeft() {
    int[] one = {4};
    LeaveOneOut leaving = new LeaveOneOut(one, TABLE.size());
    WALK.all(one, leaving);
    assertThat(leaving.ringSumWithout(0)).isZero();
    assertThat(leaving.reachLost()).containsExactly(leaving.reach());
  }

  private static ShelfFigures bruteForce(int[] paints) {
    List<String> ids = IntStream.of(paints).mapToObj(TABLE.ids()::get).toList();
    return ShelfFigures.of(WALK, TABLE, WashStrengths.USUAL, ids, ids);
  }

  private static void compare(LeaveOneOut leaving, int member, ShelfFigures bruteForce) {
    assertThat(leaving.ringSumWithout(member)).isCloseTo(bruteForce.ring().sum(), within(1e-12));
    assertThat(leaving.reach() - leaving.reachLost()[member]).isEqualTo(bruteForce.reach().size());
  }

  private static int[] without(int[] paints, int place) {
    return IntStream.range(0, paints.length).filter(i -> i != place).map(i -> paints[i]).toArray();
  }
}
