package org.panwright.app.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.app.BenchKit;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;

class OutcomeTest {
  private final Kit kit = BenchKit.kit();
  private final Lineup lineup = kit.lineups().get(0);

  private Optional<Outcome> outcome(Held held, Spot spot) {
    return Outcome.of(kit, lineup, held, spot);
  }

  private static Spot well(String id) {
    return new Spot.AtWell(id);
  }

  @Test
  void shelfPaintFillsAnEmptyWell() {
    Outcome outcome = outcome(new Held.FromShelf("sienna"), well("w4")).orElseThrow();
    assertThat(outcome).isInstanceOf(Outcome.Place.class);
    assertThat(outcome.edit()).contains(new Edit.PlacePaint("line", "w4", "sienna"));
    assertThat(outcome.promise()).contains("Burnt Sienna").contains("well 4");
  }

  @Test
  void shelfPaintReplacesAnotherAndNamesIt() {
    Outcome outcome = outcome(new Held.FromShelf("sienna"), well("w2")).orElseThrow();
    assertThat(outcome).isInstanceOf(Outcome.Replace.class);
    assertThat(outcome.edit()).contains(new Edit.PlacePaint("line", "w2", "sienna"));
    assertThat(outcome.promise()).contains("Burnt Sienna").contains("Ultramarine");
    assertThat(outcome.hint()).contains("Ultramarine");
  }

  @Test
  void paintOntoItselfChangesNothing() {
    assertThat(outcome(new Held.FromShelf("ultra"), well("w2")).orElseThrow().edit()).isEmpty();
    assertThat(outcome(new Held.FromWell("w2"), well("w2")).orElseThrow().edit()).isEmpty();
  }

  @Test
  void wellPaintSwapsWithAnother() {
    Outcome outcome = outcome(new Held.FromWell("w1"), well("w3")).orElseThrow();
    assertThat(outcome).isInstanceOf(Outcome.Swap.class);
    assertThat(outcome.edit()).contains(new Edit.MovePaint("line", "w1", "w3"));
    assertThat(outcome.promise()).contains("Lemon Yellow").contains("Quinacridone Rose");
  }

  @Test
  void wellPaintMovesToAnEmptyWell() {
    Outcome outcome = outcome(new Held.FromWell("w1"), well("d1")).orElseThrow();
    assertThat(outcome).isInstanceOf(Outcome.Move.class);
    assertThat(outcome.promise()).contains("well 1").contains("dab 1");
  }

  @Test
  void wellPaintOverTheShelfIsTakenOut() {
    Outcome outcome = outcome(new Held.FromWell("w1"), new Spot.AtShelf()).orElseThrow();
    assertThat(outcome.edit()).contains(new Edit.EmptyWell("line", "w1"));
    assertThat(outcome.hint()).contains("Lemon Yellow");
  }

  @Test
  void whatIsNotThereHasNoOutcome() {
    assertThat(outcome(new Held.FromWell("w5"), well("w1"))).isEmpty();
    assertThat(outcome(new Held.FromShelf("gone"), well("w1"))).isEmpty();
    assertThat(outcome(new Held.FromShelf("sienna"), well("gone"))).isEmpty();
  }
}
