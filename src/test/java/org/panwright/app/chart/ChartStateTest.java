package org.panwright.app.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Lab;
import org.panwright.paint.Wash;
import org.panwright.swatch.grid.CellContent;
import org.panwright.swatch.grid.CellReading;
import org.panwright.swatch.sheet.HeldLightness;
import org.panwright.swatch.sheet.PatchReading;

class ChartStateTest {
  @Test
  void cellsLearntFromThatAreDarkerThanCanBeShownAreTold() {
    // A face that turns back 3 % looks like L* 116 ∛0.03 − 16 = 20.04 (Saunderson; CIE 015).
    ChartState state =
        ChartState.NONE.withCells(List.of(cell(16, true), cell(20.1, true), cell(12, false)));

    assertThat(state.tooDark()).containsExactly(new Lab(16, 0, 0));
    assertThat(ChartState.NONE.tooDark()).isEmpty();
  }

  private static ChartCell cell(double lightness, boolean kept) {
    CellContent black = new CellContent("black", Optional.empty(), 1, Wash.CREAM);
    PatchReading patch =
        new PatchReading(new Lab(lightness, 0, 0), HeldLightness.NOT_HELD, 0.5, 0, 0, 0, 400);
    return new ChartCell(new CellReading(0, 0, black, patch), Optional.empty(), kept);
  }
}
