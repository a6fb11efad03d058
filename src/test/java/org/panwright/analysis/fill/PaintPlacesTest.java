package org.panwright.analysis.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.compare.LineupPair;
import org.panwright.kit.Fill;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;

class PaintPlacesTest {
  @Test
  void everyPlaceOfAPaintIsToldWithItsAge() {
    Kit kit = Stocks.kit(Stocks.tube("t", "blue", 5, 3, Double.NaN));
    kit = Stocks.with(kit, "first", "well-1", "blue", Fill.FULL);
    kit = Stocks.with(kit, "spare", "well-1", "blue", Fill.FULL);
    kit =
        kit.withStock(
            kit.stock().filling(new FilledWell("slim", "well-3", "blue", Stocks.DAY, 1, 0.4)));
    PaintPlaces blue = PaintPlaces.of(kit, "blue", Stocks.DAY.plusDays(30));
    assertThat(blue.leftMl()).isEqualTo(3);
    assertThat(blue.isDoubled()).isTrue();
    assertThat(blue.inWellsMl()).isEqualTo(0.4);
    assertThat(blue.places().get(0).lineupIds()).containsExactly("first", "spare");
    assertThat(blue.places().get(0).filled()).isEmpty();
    assertThat(blue.places().get(1).boxId()).isEqualTo("slim");
    assertThat(blue.places().get(1).ageDays()).hasValue(30);
    assertThat(PaintPlaces.of(kit, Stocks.DAY))
        .as("yellow is nowhere")
        .extracting(PaintPlaces::paintId)
        .containsExactly("blue");
  }

  /** What two boxes reach together is never less than what the better reaches alone. */
  @Test
  void pairsOfBoxesComeInTheOrderOfWhatTheyReach() {
    List<LineupPair> pairs =
        LineupPair.all(
            DemoKit.read(PigmentLibraryReader.read()), PigmentLibraryReader.read(), () -> false);
    assertThat(pairs).isNotEmpty();
    assertThat(pairs).allSatisfy(pair -> assertThat(pair.gain()).isNotNegative());
    assertThat(pairs).allSatisfy(pair -> assertThat(pair.ringShare()).isBetween(0.3, 1.0));
    assertThat(pairs).isSortedAccordingTo((a, b) -> Integer.compare(b.reach(), a.reach()));
  }
}
