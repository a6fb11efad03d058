package org.panwright.analysis.mud;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Ratio;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;

class MudTest {
  /** Pairs painters know to give greys and darks (common practice). */
  @ParameterizedTest
  @CsvSource({"PB29, PBr7 burnt sienna", "PG7, PR254"})
  void knownNeutralisersAreGreysNotMud(String first, String second) {
    Mud mud = mud(first, second);
    assertThat(mud.muddy()).isEmpty();
    assertThat(mud.greys()).hasSize(1);
    assertThat(mud.greys().get(0).greyestChroma()).isLessThan(PairMud.GREY_BELOW);
    assertThat(mud.byPaint()).isEmpty();
  }

  /**
   * A warm red with a warm blue dulls, a cool red with a cool blue stays clean (common practice).
   */
  @Test
  void crossingTheCircleMuddiesMoreThanStayingOnOneSide() {
    double clean = mud("PR122", "PB29").muddy().get(0).loss();
    double dull = mud("PR254", "PB29").muddy().get(0).loss();
    assertThat(dull).isGreaterThan(clean + 0.1);
  }

  @Test
  void neighboursHardlyLoseAnything() {
    assertThat(mud("PY154", "PY65").muddy().get(0).loss()).isBetween(0.0, 0.05);
  }

  @Test
  void neutralsAreLeftOut() {
    Mud mud = mud("PBk6", "PR254");
    assertThat(mud.muddy()).isEmpty();
    assertThat(mud.greys()).isEmpty();
  }

  /** The formula again, mix by mix with the spectral mixer. */
  @Test
  void lossIsTheMeanShareOfChromaLost() {
    OpticsTable table =
        OpticsTable.of(Lineups.paints("PY65", "PB15:3"), Lineups.LIBRARY, Paper.WHITE);
    double load = WashStrengths.USUAL.load(Mud.WASH);
    double first = chroma(table, Recipe.of("PY65"), load);
    double second = chroma(table, Recipe.of("PB15:3"), load);
    double sum = 0;
    for (Ratio ratio : Ratio.GRID) {
      double share = (double) ratio.first() / (ratio.first() + ratio.second());
      double mix = chroma(table, Recipe.of("PY65", ratio.first(), "PB15:3", ratio.second()), load);
      sum += Math.max(0, 1 - mix / (share * first + (1 - share) * second));
    }
    PairMud pair = mud("PY65", "PB15:3").muddy().get(0);
    assertThat(pair.loss()).isCloseTo(sum / 7, within(1e-6));
  }

  @Test
  void aPaintsMudIsTheMeanOfItsPairs() {
    Mud mud = mud("PY65", "PR122", "PB15:3");
    assertThat(mud.muddy()).hasSize(3);
    double mean =
        mud.muddy().stream()
            .filter(p -> p.firstPaintId().equals("PY65") || p.secondPaintId().equals("PY65"))
            .mapToDouble(PairMud::loss)
            .average()
            .orElseThrow();
    assertThat(mud.byPaint().get("PY65")).isCloseTo(mean, within(1e-12));
    assertThat(mud.muddy().stream().map(p -> -p.loss()).toList()).isSorted();
  }

  private static double chroma(OpticsTable table, Recipe recipe, double load) {
    Lab lab = new Mixer(table).lab(recipe, load);
    return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch().c();
  }

  private static Mud mud(String... ids) {
    return Lineups.judge(Lineups.kit(Lineups.paints(ids), ids.length, ids)).mud();
  }
}
