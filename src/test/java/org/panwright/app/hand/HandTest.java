package org.panwright.app.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.BenchKit;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.hand.Holding.Means;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;

class HandTest {
  private final Session session = BenchKit.session(BenchKit.kit());
  private final Hand hand = new Hand(session);

  private Optional<String> paintIn(String wellId) {
    return session.lineup().flatMap(l -> l.in(wellId)).map(Filling::paintId);
  }

  private Optional<Integer> previewedPaints() {
    return session.previewProperty().get().map(Judgement::grid).map(grid -> grid.size());
  }

  @Test
  void hoveringPreviewsWithoutChangingTheKit() {
    hand.pickUp(new Held.FromShelf("sienna"), Means.POINTER);
    assertThat(previewedPaints()).isEmpty();
    hand.hover(new Spot.AtWell("w4"));
    assertThat(previewedPaints()).contains(4);
    assertThat(paintIn("w4")).isEmpty();
    assertThat(hand.statusProperty().get()).contains("Burnt Sienna").contains("well 4");
  }

  @Test
  void leavingEndsThePreviewAndKeepsHolding() {
    hand.pickUp(new Held.FromShelf("sienna"), Means.POINTER);
    hand.hover(new Spot.AtWell("w4"));
    hand.leave();
    assertThat(previewedPaints()).isEmpty();
    assertThat(hand.holding().orElseThrow().spot()).isEmpty();
  }

  @Test
  void puttingDownIsOneUndoableStepAndPicksTheWell() {
    hand.pickUp(new Held.FromShelf("sienna"), Means.KEYS);
    hand.hover(new Spot.AtWell("w4"));
    assertThat(hand.putDown()).isTrue();
    assertThat(paintIn("w4")).contains("sienna");
    assertThat(hand.holding()).isEmpty();
    assertThat(previewedPaints()).isEmpty();
    assertThat(session.historyProperty().get().past()).hasSize(1);
    assertThat(session.selectionProperty().get()).isEqualTo(new Selection.OfWell("w4"));
    assertThat(hand.statusProperty().get()).contains("Burnt Sienna").contains("well 4");
  }

  @Test
  void cancellingLeavesEverythingAsItWas() {
    hand.pickUp(new Held.FromWell("w1"), Means.KEYS);
    hand.hover(new Spot.AtWell("w2"));
    hand.cancel();
    assertThat(hand.holding()).isEmpty();
    assertThat(previewedPaints()).isEmpty();
    assertThat(session.historyProperty().get().past()).isEmpty();
    assertThat(paintIn("w1")).contains("lemon");
  }

  @Test
  void puttingDownNowhereChangesNothing() {
    hand.pickUp(new Held.FromWell("w1"), Means.POINTER);
    assertThat(hand.putDown()).isFalse();
    assertThat(session.historyProperty().get().past()).isEmpty();
  }

  @Test
  void anEmptyWellGivesNothingToHold() {
    assertThat(hand.pickUp(new Held.FromWell("w5"), Means.KEYS)).isFalse();
    assertThat(hand.holding()).isEmpty();
  }

  @Test
  void aChangeOfTheKitMeanwhileLetsGo() {
    hand.pickUp(new Held.FromWell("w1"), Means.KEYS);
    hand.hover(new Spot.AtWell("w4"));
    session.perform(new Edit.EmptyWell("line", "w1"));
    assertThat(hand.holding()).isEmpty();
    assertThat(previewedPaints()).isEmpty();
  }

  @Test
  void swappingOverAFilledWellPreviewsTheSamePaints() {
    hand.pickUp(new Held.FromWell("w1"), Means.POINTER);
    hand.hover(new Spot.AtWell("w2"));
    assertThat(previewedPaints()).contains(3);
    hand.putDown();
    assertThat(paintIn("w1")).contains("ultra");
    assertThat(paintIn("w2")).contains("lemon");
  }
}
