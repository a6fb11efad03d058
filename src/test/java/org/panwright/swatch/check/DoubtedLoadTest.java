package org.panwright.swatch.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.mixing.Surface;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.HyperbolicCoat;
import org.panwright.swatch.fit.InventedPaints;
import org.panwright.swatch.fit.OpticsFit;

/** Coats painted by {@link HyperbolicCoat} in known loads, of which one is noted wrong. */
class DoubtedLoadTest {
  private static final double[] LOADS = {0.1, 0.25, 0.6, 1};

  @ParameterizedTest(name = "{0} of load {1} noted {2} times")
  @CsvSource({"blue, 0.25, 2", "blue, 0.25, 0.5", "yellow, 0.25, 0.5", "black, 0.25, 0.5"})
  void aLoadNotedWrongIsFoundWithTheOneThatFits(String paint, double load, double times)
      throws FitRefusedException {
    List<Swatch> coats = ladder(paint);
    Swatch right = coats.get(1);
    assertThat(right.totalLoad()).isEqualTo(load);
    coats.set(1, new Swatch(right.name(), right.paints(times), right.reading(), right.ground()));

    DoubtedLoad found = doubted(coats).orElseThrow();

    assertThat(found.swatch().name()).isEqualTo(right.name());
    assertThat(found.swatch().totalLoad() * found.factor()).isCloseTo(load, within(load * 0.25));
  }

  @ParameterizedTest
  @CsvSource({"blue", "yellow", "black"})
  void loadsNotedRightAreNotDoubted(String paint) throws FitRefusedException {
    assertThat(doubted(ladder(paint))).isEmpty();
  }

  @Test
  void aWashBesideOneFullCoatIsNotAsked() throws FitRefusedException {
    List<Swatch> two = ladder("blue").subList(1, 4);
    Swatch wash = two.get(0);
    assertThat(
            doubted(
                List.of(
                    new Swatch(wash.name(), wash.paints(3), wash.reading(), wash.ground()),
                    two.get(2))))
        .isEmpty();
  }

  private static List<Swatch> ladder(String paint) {
    List<Swatch> coats = new ArrayList<>();
    for (double load : LOADS) {
      coats.add(InventedPaints.coat(Surface.DRY, List.of(new PaintLoad(paint, load))));
    }
    return coats;
  }

  private static Optional<DoubtedLoad> doubted(List<Swatch> coats) throws FitRefusedException {
    SwatchSet set = new SwatchSet(coats);
    FitReport report = OpticsFit.of(set, FitSettings.FOR_ENGINE);
    return DoubtedLoad.in(set, FitSettings.FOR_ENGINE, Map.of(), report, () -> false);
  }
}
