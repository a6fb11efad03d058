package org.panwright.analysis.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.outing.Refill;
import org.panwright.kit.Fill;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;

/**
 * Two lineups of one box that want other paints in the same well: the second pan lies beside the
 * box. Figures by hand: a full half pan of {@link Stocks} is 1 ml dry and takes 2 ml wet.
 */
class SecondPanTest {
  private static final double UNKNOWN = Double.NaN;

  @Test
  void bothPansAreFilledAndTheSecondLiesBesideTheBox() {
    Kit kit = contested();
    FillPlan plan = plan(kit, "first", "spare");
    assertThat(plan.wells()).extracting(PlannedWell::givenMl).containsExactly(2.0, 2.0);
    Stock after = plan.carriedOut(kit, Stocks.DAY, well -> true).apply(kit).stock();
    assertThat(after.filled()).containsExactly(full("blue"));
    assertThat(after.aside()).containsExactly(full("yellow"));
    assertThat(after.tubes()).extracting(Tube::leftMl).containsExactly(3.0, 3.0);
    FillPlan again = plan(kit.withStock(after), "first", "spare");
    assertThat(again.toFill()).as("nothing is left to do").isEmpty();
    assertThat(again.wells()).extracting(PlannedWell::beside).containsExactly(false, true);
  }

  @Test
  void aPanThatComesOutOfItsWellIsKept() {
    Kit kit = contested();
    kit = kit.withStock(kit.stock().filling(full("yellow")));
    FillPlan plan = plan(kit, "first");
    Stock after = plan.carriedOut(kit, Stocks.DAY, well -> true).apply(kit).stock();
    assertThat(after.filled()).containsExactly(full("blue"));
    assertThat(after.aside()).containsExactly(full("yellow"));
  }

  @Test
  void theSecondPanFilledAloneWhileItIsInTheWellStaysThere() {
    Kit kit = contested();
    kit = kit.withStock(kit.stock().filling(half("yellow")));
    FillPlan plan = plan(kit, "first", "spare");
    assertThat(plan.wells().get(1).heldMl()).isEqualTo(0.5);
    Stock after =
        plan.carriedOut(kit, Stocks.DAY, well -> well.lineupId().equals("spare"))
            .apply(kit)
            .stock();
    assertThat(after.filled()).containsExactly(full("yellow"));
    assertThat(after.aside()).isEmpty();
  }

  @Test
  void aDabPlaceIsNoPanAndGoesToTheFirstLineupAlone() {
    Kit kit = Stocks.kit(Stocks.tube("b", "blue", 5, 5, UNKNOWN));
    kit = Stocks.with(kit, "first", "dab-1", "blue", Fill.DAB);
    kit = Stocks.with(kit, "spare", "dab-1", "yellow", Fill.DAB);
    FillPlan plan = plan(kit, "first", "spare");
    assertThat(plan.wells()).extracting(PlannedWell::needMl).containsExactly(0.5, 0.0);
    kit =
        kit.withStock(
            kit.stock().filling(new FilledWell("tin", "dab-1", "yellow", Stocks.DAY, 1, 1)));
    Stock after = plan(kit, "first").carriedOut(kit, Stocks.DAY, well -> true).apply(kit).stock();
    assertThat(after.aside()).as("a dab cannot be laid aside").isEmpty();
  }

  @Test
  void aLineupWhosePanLiesBesideTheBoxIsToldToPutItIn() {
    Kit kit = contested();
    Stock stock = kit.stock().filling(full("blue")).withAside(List.of(full("yellow")));
    Kit filled = kit.withStock(stock);
    assertThat(Refill.before(filled, filled.lineup("spare").orElseThrow(), Map.of()))
        .extracting(Refill::why)
        .containsExactly(Refill.Why.BESIDE);
    assertThat(PaintPlaces.of(filled, "yellow", Stocks.DAY).places())
        .extracting(PaintPlaces.Place::beside)
        .containsExactly(true);
  }

  /** Blue for the first lineup of the tin, yellow for its other one, in the same well. */
  private static Kit contested() {
    Kit kit =
        Stocks.kit(
            Stocks.tube("b", "blue", 5, 5, UNKNOWN), Stocks.tube("y", "yellow", 5, 5, UNKNOWN));
    kit = Stocks.with(kit, "first", "well-1", "blue", Fill.FULL);
    return Stocks.with(kit, "spare", "well-1", "yellow", Fill.FULL);
  }

  private static FilledWell full(String paintId) {
    return new FilledWell("tin", "well-1", paintId, Stocks.DAY, 1, 1);
  }

  private static FilledWell half(String paintId) {
    return new FilledWell("tin", "well-1", paintId, Stocks.DAY, 0.5, 0.5);
  }

  private static FillPlan plan(Kit kit, String... lineups) {
    return FillPlan.of(kit, List.of(lineups), Sharing.EVENLY);
  }
}
