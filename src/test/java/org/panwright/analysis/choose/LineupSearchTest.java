package org.panwright.analysis.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Reach;
import org.panwright.analysis.reach.Ring;
import org.panwright.colour.Lab;
import org.panwright.kit.Aim;
import org.panwright.kit.Weights;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.Pigment;
import org.panwright.paint.WashStrengths;

/** Branch and bound against looking at every lineup, and the worth against its formula. */
class LineupSearchTest {
  private static final List<Lab> SUBJECTS = List.of(new Lab(55, 30, 40), new Lab(40, -20, -20));
  private static final Effort NO_LIMIT = new Effort(Long.MAX_VALUE, () -> false, share -> {});

  @ParameterizedTest(name = "{1} of {0}, shelf {2}")
  @CsvSource({"7, 3, 1", "8, 4, 2", "9, 5, 3", "10, 2, 4", "11, 9, 5", "12, 6, 6", "6, 6, 7"})
  void findsWhatBruteForceFindsOnSmallShelves(int shelf, int size, int seed) {
    Shelf given = new Shelf(shelf, seed);
    Cover cover = given.cover(size);
    LineupSearch search = search(cover, new Limits(size, 0, List.of()));

    assertThat(search.isProven()).isTrue();
    assertThat(search.bestWorth()).isEqualTo(brute(cover, size, 0, List.of()));
    assertThat(search.bound()).isEqualTo(search.bestWorth());
  }

  /** 125 970 lineups each. */
  @ParameterizedTest(name = "shelf {0}")
  @ValueSource(ints = {11, 12, 13})
  void findsTheBestTwelveOfTwenty(int seed) {
    Cover cover = new Shelf(20, seed).cover(12);
    LineupSearch search = search(cover, new Limits(12, 0, List.of()));

    assertThat(search.isProven()).isTrue();
    assertThat(search.bestWorth()).isEqualTo(brute(cover, 12, 0, List.of()));
  }

  @ParameterizedTest(name = "shelf {0}")
  @ValueSource(ints = {21, 22, 23})
  void keepsToMustsAndCapsAndIsStillTheBest(int seed) {
    Cover cover = new Shelf(11, seed).cover(5);
    List<Limits.Cap> caps = List.of(new Limits.Cap(0b111L, 1), new Limits.Cap(0b11111000L, 2));
    Limits limits = new Limits(5, 1L << 4, caps);
    LineupSearch search = search(cover, limits);

    assertThat(limits.holds(search.best())).isTrue();
    assertThat(search.bestWorth()).isEqualTo(brute(cover, 5, 1L << 4, caps));
  }

  /** The worth of bits is the worth as docs/numbers.md defines it, from ring and reach. */
  @Test
  void worthIsTheSumOfSharesOfRingAndReach() {
    Shelf given = new Shelf(9, 31);
    CoverBuilder builder = given.builder(List.of());
    given.walk.all(given.all, builder);
    Cover cover = builder.cover(new Weights(3, 1, 0, 0, 0), 4);
    int[] lineup = {1, 3, 4, 7};
    double expected =
        0.75 * given.levels(lineup) / given.levels(given.all)
            + 0.25 * given.reach(lineup) / given.reach(given.all);

    assertThat(cover.worth(cover.bits(lineup, NO_LIMIT))).isCloseTo(expected, Offset.offset(1e-12));
  }

  @Test
  void everythingTogetherIsWorthOneButForTransparency() {
    Shelf given = new Shelf(8, 32);
    CoverBuilder builder = given.builder(SUBJECTS);
    given.walk.all(given.all, builder);
    Cover cover = builder.cover(new Weights(1, 2, 3, 4, 0), 8);

    assertThat(cover.worth(cover.bits(given.all, NO_LIMIT))).isCloseTo(1, Offset.offset(1e-12));
  }

  @Test
  void partsByAimSumToTheWorth() {
    Cover cover = new Shelf(8, 33).cover(8);
    long[] bits = cover.bits(new int[] {0, 2, 5}, NO_LIMIT);
    Map<Aim, Double> parts = cover.byAim(bits);

    assertThat(parts.values().stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(cover.worth(bits), Offset.offset(1e-12));
  }

  /** What leaving paints out costs at least, against really leaving them out. */
  @Test
  void noSubsetIsWorthMoreThanItsFarewellAllows() {
    Cover cover = new Shelf(9, 34).cover(5);
    int[] order = IntStream.range(0, 9).toArray();
    Farewell farewell = Farewell.of(cover, 0b111111111L, 0b111111111L, NO_LIMIT);
    for (long set = 0; set < 1 << 9; set++) {
      double allowed = farewell.worth();
      for (int paint : order) {
        allowed -= (set >>> paint & 1) == 0 ? farewell.of(paint) : 0;
      }
      assertThat(worth(cover, set)).isLessThanOrEqualTo(allowed + 1e-12);
    }
  }

  @Test
  void aBoundHoldsWhenTheEffortIsSpent() {
    Cover cover = new Shelf(20, 35).cover(10);
    Limits limits = new Limits(10, 0, List.of());
    LineupSearch stopped =
        new LineupSearch(cover, limits, 0b1111111111L, new Effort(2000, () -> false, share -> {}));
    stopped.run();
    LineupSearch whole = search(cover, limits);

    assertThat(stopped.isProven()).isFalse();
    assertThat(stopped.bound()).isGreaterThanOrEqualTo(whole.bestWorth());
  }

  @Test
  void exchangingPaintsIsRepeatable() {
    Cover cover = new Shelf(24, 36).cover(8);
    Limits limits = new Limits(8, 0, List.of());

    assertThat(swapped(cover, limits)).isEqualTo(swapped(cover, limits));
  }

  private static long swapped(Cover cover, Limits limits) {
    Effort effort = new Effort(50_000, () -> false, share -> {});
    return new SwapSearch(cover, limits, effort, set -> {}).best().orElseThrow();
  }

  private static LineupSearch search(Cover cover, Limits limits) {
    long start =
        new SwapSearch(cover, limits, new Effort(1, () -> false, share -> {}), set -> {})
            .best()
            .orElseThrow();
    LineupSearch search = new LineupSearch(cover, limits, start, NO_LIMIT);
    search.run();
    return search;
  }

  /** The greatest worth of all lineups, each looked at. */
  private static double brute(Cover cover, int size, long must, List<Limits.Cap> caps) {
    return brute(cover, new Limits(size, must, caps), new int[size], 0, 0, new long[cover.words()]);
  }

  private static double brute(
      Cover cover, Limits limits, int[] lineup, int count, int next, long[] bits) {
    if (count == lineup.length) {
      long set = 0;
      for (int paint : lineup) {
        set |= 1L << paint;
      }
      return limits.holds(set) ? cover.worth(bits) : -1;
    }
    double best = -1;
    for (int paint = next; paint <= cover.candidates() - lineup.length + count; paint++) {
      long[] with = bits.clone();
      cover.add(with, paint, lineup, count);
      lineup[count] = paint;
      best = Math.max(best, brute(cover, limits, lineup, count + 1, paint + 1, with));
    }
    return best;
  }

  private static double worth(Cover cover, long set) {
    return cover.worth(cover.bits(LineupSearch.members(set), NO_LIMIT));
  }

  /** A shelf of pigments drawn by lot. */
  private static final class Shelf {
    final NetWalk walk;
    final int[] all;
    private final List<Paint> paints;

    Shelf(int size, int seed) {
      List<String> pigments = new ArrayList<>();
      for (Pigment pigment : Lineups.LIBRARY.pigments()) {
        pigments.add(pigment.name().toString());
      }
      Collections.shuffle(pigments, new Random(seed));
      paints = pigments.subList(0, size).stream().map(Lineups::paint).toList();
      walk =
          new NetWalk(
              OpticsTable.of(paints, Lineups.LIBRARY, Paper.WHITE),
              WashStrengths.USUAL,
              () -> false);
      all = IntStream.range(0, size).toArray();
    }

    CoverBuilder builder(List<Lab> subjects) {
      boolean[] transparent = new boolean[all.length];
      transparent[0] = true;
      transparent[all.length / 2] = true;
      return new CoverBuilder(all, all.length, subjects, transparent);
    }

    Cover cover(int lineup) {
      CoverBuilder builder = builder(SUBJECTS);
      walk.all(all, builder);
      return builder.cover(Weights.USUAL, lineup);
    }

    /** Whole hundredths of chroma round the ring. */
    int levels(int[] lineup) {
      Ring.Gatherer ring = new Ring.Gatherer();
      walk.all(lineup, ring);
      int levels = 0;
      for (double chroma : ring.ring().toArray()) {
        levels += (int) (chroma / 0.01);
      }
      return levels;
    }

    int reach(int[] lineup) {
      Reach.Gatherer reach = new Reach.Gatherer();
      walk.all(lineup, reach);
      return reach.reach().size();
    }
  }
}
