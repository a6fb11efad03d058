package org.panwright.app.arrange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.arrange.WellOrder;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.EditWords;

class ArrangeModelTest {
  private final Kit kit = ThreePaintKit.kit();
  private final Lineup lineup = kit.lineup(ThreePaintKit.LINEUP).orElseThrow();
  private final ArrangeModel model =
      new ArrangeModel(
          kit,
          lineup,
          new Arranger(new PigmentLibrary(List.of())),
          Sessions.AT_ONCE,
          Sessions.AT_ONCE,
          Sessions::fail);

  @Test
  void theEditLaysTheSamePaintsIntoTheSameWells() {
    model.orderProperty().set(WellOrder.LIGHT_TO_DARK);
    Lineup after = model.edit().apply(kit).lineup(ThreePaintKit.LINEUP).orElseThrow();

    assertThat(after.fillings().keySet()).isEqualTo(lineup.fillings().keySet());
    assertThat(after.fillings().values())
        .containsExactlyInAnyOrderElementsOf(lineup.fillings().values());
  }

  @Test
  void theMirrorChangesTheOuterPaintsAndSaysSo() {
    model.orderProperty().set(WellOrder.AS_THEY_ARE);
    model.leftHandedProperty().set(true);

    assertThat(model.after().in("w1").orElseThrow().paintId()).isEqualTo("blue");
    assertThat(EditWords.of(model.edit(), kit)).isEqualTo("arrange lineup two paints");
  }

  @Test
  void aPinnedWellKeepsItsPaintUntilItIsFreed() {
    model.orderProperty().set(WellOrder.AS_THEY_ARE);
    model.leftHandedProperty().set(true);
    model.togglePin("w1");
    assertThat(model.after().in("w1")).isEqualTo(lineup.in("w1"));
    assertThat(model.pinnedPaints()).containsExactly("yellow");
    model.togglePin("w1");
    assertThat(model.after().in("w1").orElseThrow().paintId()).isEqualTo("blue");
  }

  @Test
  void anEmptyWellCannotBePinned() {
    model.togglePin("w3");
    assertThat(model.pinnedProperty().get()).isEmpty();
  }
}
