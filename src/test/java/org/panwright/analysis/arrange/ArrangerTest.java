package org.panwright.analysis.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.analysis.Lineups;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

class ArrangerTest {
  private final Arranger arranger = new Arranger(Lineups.LIBRARY);

  /** Yellow, red, violet, blue, green, then earths, then black: usual order (common practice). */
  @Test
  void byHueRunsFromYellowToGreenThenEarthsThenNeutrals() {
    assertThat(paints(kit("PBk7", "PB29", "PBr7", "PG7", "PY175", "PR254", "PV23"), WellOrder.HUE))
        .containsExactly("PY175", "PR254", "PV23", "PB29", "PG7", "PBr7", "PBk7");
  }

  @Test
  void warmComesBeforeCool() {
    List<String> order = paints(kit("PB15:3", "PO73", "PG7", "PY65"), WellOrder.WARM_TO_COOL);
    assertThat(order.subList(0, 2)).containsExactlyInAnyOrder("PO73", "PY65");
  }

  @Test
  void lightComesBeforeDark() {
    assertThat(paints(kit("PBk7", "PY175", "PR254"), WellOrder.LIGHT_TO_DARK))
        .containsExactly("PY175", "PR254", "PBk7");
  }

  @Test
  void withoutPinsAnOrderCostsNothingAndIsBest() {
    Arrangement laid = laid(kit("PBk7", "PY175", "PR254"), WellOrder.LIGHT_TO_DARK, Set.of());
    assertThat(laid.cost()).isZero();
    assertThat(laid.before()).isPositive();
    assertThat(laid.isBest()).isTrue();
  }

  @Test
  void aPinnedWellKeepsItsPaint() {
    Kit kit = kit("PBk7", "PY175", "PR254", "PB29");
    for (WellOrder order : WellOrder.values()) {
      Arrangement laid = laid(kit, order, Set.of("w0"));
      assertThat(laid.fillings().get("w0").paintId()).isEqualTo("PBk7");
      assertThat(laid.fillings()).hasSize(4);
      assertThat(laid.cost()).isLessThanOrEqualTo(laid.before() + 1e-12);
    }
  }

  /** Four wells in a row of four read from the right for the left hand. */
  @Test
  void forTheLeftHandTheOrderRunsAsInAMirror() {
    Kit kit = kit("PBk7", "PY175", "PR254", "PB29");
    Lineup lineup = kit.lineup(Lineups.ID).orElseThrow();
    Arrangement right = arranger.arrange(kit, lineup, WellOrder.HUE, Set.of(), false, () -> false);
    Arrangement left = arranger.arrange(kit, lineup, WellOrder.HUE, Set.of(), true, () -> false);
    for (int i = 0; i < 4; i++) {
      assertThat(left.fillings().get("w" + (3 - i))).isEqualTo(right.fillings().get("w" + i));
    }
    Arrangement mirrored =
        arranger.arrange(kit, lineup, WellOrder.AS_THEY_ARE, Set.of(), true, () -> false);
    assertThat(mirrored.fillings().get("w0").paintId()).isEqualTo("PB29");
  }

  /**
   * A stainer and its victim at the ends of a row of three, something between (common practice).
   */
  @Test
  void kindNeighboursKeepsAStainerAwayFromALightWeakPaint() {
    List<String> order = paints(kit("PB15:3", "PY53", "PY43"), WellOrder.KIND_NEIGHBOURS);
    assertThat(order.get(1)).isEqualTo("PY43");
  }

  @Test
  void anEmptyLineupAndOnePaintStayAsTheyAre() {
    for (WellOrder order : WellOrder.values()) {
      assertThat(laid(kit(), order, Set.of()).fillings()).isEmpty();
      assertThat(laid(kit("PB29"), order, Set.of()).cost()).isZero();
    }
  }

  /** Against every order of seven paints, some pinned. */
  @ParameterizedTest(name = "keys {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void noOrderOfAChainStepsBackLess(int seed) {
    Random random = new Random(seed);
    double[] keys = random.doubles(7).toArray();
    boolean[] pinned = new boolean[7];
    pinned[random.nextInt(7)] = true;
    pinned[random.nextInt(7)] = true;
    double[] least = {Double.MAX_VALUE};
    permute(
        new int[] {0, 1, 2, 3, 4, 5, 6},
        0,
        order -> {
          for (int i = 0; i < 7; i++) {
            if (pinned[i] && order[i] != i) {
              return;
            }
          }
          least[0] = Math.min(least[0], ChainOrder.cost(keys, order));
        });
    ChainOrder.Laid laid = ChainOrder.lay(keys, pinned);

    assertThat(laid.cost()).isCloseTo(least[0], Offset.offset(1e-12));
    assertThat(laid.bound()).isEqualTo(laid.cost());
  }

  /** Beyond the exact method the bound must still hold: against the exact cost of the same pins. */
  @Test
  void beyondTheExactMethodTheBoundIsThatOfThePins() {
    double[] keys = new Random(9).doubles(18).toArray();
    boolean[] pinned = new boolean[18];
    pinned[3] = true;
    ChainOrder.Laid laid = ChainOrder.lay(keys, pinned);

    assertThat(laid.bound()).isZero();
    assertThat(laid.places().get(3)).isEqualTo(3);
  }

  /** Against every way to lay seven paints into two rows. */
  @ParameterizedTest(name = "harm {0}")
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void noWayToLayPaintsHarmsLess(int seed) {
    Random random = new Random(seed);
    int size = 7;
    double[][] harm = new double[size][size];
    boolean[][] beside = new boolean[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        harm[i][j] = harm[j][i] = random.nextDouble();
        beside[i][j] = beside[j][i] = i - j == 1 || i - j == 4;
      }
    }
    NeighbourOrder laid =
        new NeighbourOrder(harm, beside, new boolean[size], new int[size], () -> false);
    laid.run();
    double[] least = {Double.MAX_VALUE};
    permute(
        new int[] {0, 1, 2, 3, 4, 5, 6},
        0,
        order -> least[0] = Math.min(least[0], laid.cost(order)));

    assertThat(laid.cost()).isCloseTo(least[0], Offset.offset(1e-9));
    assertThat(laid.bound()).isCloseTo(least[0], Offset.offset(1e-9));
  }

  @Test
  void moreDabsThanDabPlacesSitAsDabsInPansAndMorePaintsThanWellsDoNotFit() {
    Kit kit = kit("PB29");
    var box = kit.boxes().get(0);
    assertThat(Arranger.place(box, List.of("a", "b"), List.of("c"), Map.of()).orElseThrow())
        .containsEntry("w2", new Filling("c", Fill.DAB));
    List<String> many = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      many.add("p" + i);
    }
    assertThat(Arranger.place(box, many, List.of(), Map.of())).isEmpty();
  }

  private List<String> paints(Kit kit, WellOrder order) {
    Map<String, Filling> fillings = laid(kit, order, Set.of()).fillings();
    return kit.boxes().get(0).wells().stream()
        .filter(well -> fillings.containsKey(well.id()))
        .map(well -> fillings.get(well.id()).paintId())
        .toList();
  }

  private Arrangement laid(Kit kit, WellOrder order, Set<String> pinned) {
    return arranger.arrange(
        kit, kit.lineup(Lineups.ID).orElseThrow(), order, pinned, false, () -> false);
  }

  /** As many wells as paints, in a row that fills the box but for its margin. */
  private static Kit kit(String... inBox) {
    Kit kit = Lineups.kit(Lineups.paints(inBox), Math.max(4, inBox.length), inBox);
    var box = kit.boxes().get(0);
    double width = 20.0 * box.wells().size() - 4;
    var snug =
        new org.panwright.kit.Box(
            box.id(), box.name(), Math.max(10, width), 300, 300, 300, box.wells());
    return kit.withBoxes(List.of(snug), kit.lineups());
  }

  private static void permute(int[] order, int from, Consumer<int[]> each) {
    if (from == order.length) {
      each.accept(order);
      return;
    }
    for (int i = from; i < order.length; i++) {
      swap(order, from, i);
      permute(order, from + 1, each);
      swap(order, from, i);
    }
  }

  private static void swap(int[] order, int one, int other) {
    int was = order[one];
    order[one] = order[other];
    order[other] = was;
  }
}
