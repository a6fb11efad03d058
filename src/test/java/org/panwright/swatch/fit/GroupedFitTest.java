package org.panwright.swatch.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Difference;
import org.panwright.colour.Light;
import org.panwright.mixing.Surface;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;

/** Many paints at once: copies of the invented ones under other names. */
class GroupedFitTest {
  private static final int COPIES = 10;

  @Test
  void manyPaintsAreFittedInGroupsThatAgree() throws Exception {
    SwatchSet set = new SwatchSet(swatches());
    assertThat(set.paints()).hasSize(2 * COPIES + 2);
    FitReport report = OpticsFit.of(set, FitSettings.FOR_ENGINE);
    assertThat(report.optics().keySet()).containsExactlyInAnyOrderElementsOf(set.paints());
    assertThat(report.residuals()).hasSameSizeAs(set.swatches());
    for (int copy = 0; copy < COPIES; copy += 3) {
      List<PaintLoad> mix = List.of(new PaintLoad("yellow", 0.4), new PaintLoad("blue", 0.4));
      List<PaintLoad> named =
          List.of(
              new PaintLoad("yellow " + copy, 0.4),
              new PaintLoad("blue " + (COPIES - 1 - copy), 0.4));
      double off =
          Difference.ciede2000(
              Light.D65.lab(report.predict(named, InventedPaints.paper())),
              InventedPaints.read(Surface.DRY, mix).lab());
      assertThat(off).isLessThan(2);
    }
  }

  private static List<Swatch> swatches() {
    List<Swatch> swatches = new ArrayList<>();
    for (Swatch coat : InventedPaints.fourEach(Surface.DRY)) {
      boolean coloured =
          coat.paints().stream()
              .anyMatch(p -> p.paint().equals("yellow") || p.paint().equals("blue"));
      for (int copy = 0; copy < (coloured ? COPIES : 1); copy++) {
        swatches.add(coloured ? renamed(coat, copy) : coat);
      }
    }
    return swatches;
  }

  private static Swatch renamed(Swatch coat, int copy) {
    List<PaintLoad> paints =
        coat.paints().stream()
            .map(
                p ->
                    p.paint().equals("yellow") || p.paint().equals("blue")
                        ? new PaintLoad(p.paint() + " " + copy, p.load())
                        : p)
            .toList();
    return new Swatch(coat.name() + copy, paints, coat.reading(), coat.ground());
  }
}
