package org.panwright.swatch.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.mixing.Surface;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.InventedPaints;
import org.panwright.swatch.fit.OpticsFit;

class OddCoatTest {
  private static final List<Swatch> GOOD = InventedPaints.fourAndOneOnBlack(Surface.DRY);

  @Test
  void thereIsNoneWhereAllAgree() throws FitRefusedException {
    assertThat(oddOf(GOOD)).isEmpty();
  }

  @ParameterizedTest(name = "coat {0} read from coat {1}")
  @CsvSource({"0, 4", "4, 0", "6, 2", "2, 5"})
  void aCoatReadFromAnotherPatchIsFound(int wrong, int from) throws FitRefusedException {
    List<Swatch> swatches = new ArrayList<>(GOOD);
    Swatch right = GOOD.get(wrong);
    swatches.set(
        wrong, new Swatch(right.name(), right.paints(), GOOD.get(from).reading(), right.ground()));

    assertThat(oddOf(swatches)).map(odd -> odd.swatch().name()).contains(right.name());
  }

  @Test
  void aFullCoatThatAloneTellsHowStrongItsPaintIsIsNotOdd() throws FitRefusedException {
    // All are right; the washes are half as strong as noted, and nobody believes the note. Without
    // its full-strength coat a paint may be of any strength, so the rest foretells that coat badly.
    List<Swatch> swatches = new ArrayList<>();
    for (String paint : List.of("yellow", "blue", "black")) {
      Swatch wash = InventedPaints.coat(Surface.DRY, List.of(new PaintLoad(paint, 0.25)));
      swatches.add(InventedPaints.coat(Surface.DRY, List.of(new PaintLoad(paint, 1))));
      swatches.add(new Swatch(wash.name(), wash.paints(2), wash.reading(), wash.ground(), 0.5));
    }

    assertThat(oddOf(swatches)).isEmpty();
  }

  private static Optional<OddCoat> oddOf(List<Swatch> swatches) throws FitRefusedException {
    SwatchSet set = new SwatchSet(swatches);
    return OddCoat.in(set, FitSettings.FOR_ENGINE, OpticsFit.of(set, FitSettings.FOR_ENGINE));
  }
}
