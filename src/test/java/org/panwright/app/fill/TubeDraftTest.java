package org.panwright.app.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.kit.PanKind;
import org.panwright.kit.Remainder;
import org.panwright.kit.Stock;
import org.panwright.kit.Tube;

/** What is typed of a tube or a pan becomes one, or says what is wrong. */
class TubeDraftTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  @Test
  void aDecimalCommaIsAsGoodAsAPoint() {
    Tube tube = draft("7,5", "6,25", "12,40", "2026-05-01").toTube("t");
    assertThat(tube.sizeMl()).isEqualTo(7.5);
    assertThat(tube.leftMl()).isEqualTo(6.25);
    assertThat(tube.price()).hasValue(12.4);
    assertThat(tube.opened()).hasValue(LocalDate.of(2026, 5, 1));
  }

  @ParameterizedTest(name = "size {0}, left {1}, price {2}, opened {3}: {4}")
  @CsvSource({
    "5,    4,   '',  '',         ''",
    "5,    0,   0,   2026-06-01, ''",
    "0,    0,   '',  '',         size must be",
    "-5,   0,   '',  '',         size must be",
    "five, 0,   '',  '',         size must be",
    "5,    6,   '',  '',         A tube of 5 ml cannot have 6 ml left",
    "5,    -1,  '',  '',         What is left must be",
    "5,    4,   -1,  '',         price must be",
    "5,    4,   dear,'',         price must be",
    "5,    4,   '',  1.5.2026,   ''",
    "5,    4,   '',  1.13.2026,  Write a day as",
    "5,    4,   '',  2026-06-02, ahead of today",
    "5,    4,   '',  9999-01-01, between 1900-01-01",
    "5,    4,   '',  0026-01-01, between 1900-01-01"
  })
  void eachFaultHasASentence(
      String size, String left, String price, String opened, String sentence) {
    String problem = draft(size, left, price, opened).problem(TODAY).orElse("");
    if (sentence.isEmpty()) {
      assertThat(problem).isEmpty();
    } else {
      assertThat(problem).contains(sentence);
    }
  }

  /** (14.8 − 6.2) g / 1.4 g/ml = 6.142857 ml. */
  @Test
  void aWeighedTubeKeepsItsWeights() {
    TubeDraft weighed =
        new TubeDraft("blue", "15", true, "", "14,8", "6,2", "1,4", "", "", "scales");
    assertThat(weighed.problem(TODAY)).isEmpty();
    Tube tube = weighed.toTube("t");
    assertThat(tube.left()).isEqualTo(new Remainder.ByWeight(14.8, 6.2, 1.4));
    assertThat(tube.leftMl()).isBetween(6.1428, 6.1429);
    assertThat(TubeDraft.of(tube).toTube("t")).isEqualTo(tube);
  }

  @ParameterizedTest(name = "{0} g on the scales, {1} g empty, {2} g/ml")
  @CsvSource({"5, 6, 1.3, Weights", "x, 6, 1.3, Weights", "9, 6, 0, Density", "90, 6, 1.3, cannot"})
  void wrongWeightsAreNamed(String gross, String empty, String density, String sentence) {
    TubeDraft weighed = new TubeDraft("blue", "15", true, "", gross, empty, density, "", "", "");
    assertThat(weighed.problem(TODAY).orElseThrow()).contains(sentence);
  }

  @Test
  void aTubeWithoutAPaintIsNone() {
    assertThat(TubeDraft.fresh("").problem(TODAY)).isPresent();
    assertThat(TubeDraft.fresh("blue").problem(TODAY)).isEmpty();
  }

  @ParameterizedTest(name = "{0}, taper {1}, {2} ml: {3}")
  @CsvSource({
    "17, 1.5, 2,  ''",
    "17, 1.5, 0,  What it holds",
    "17, 1.5, -2, What it holds",
    "19, 1.5, 2,  inside size must be below",
    "17, 15,  2,  floor can be",
    "x,  1.5, 2,  inside size must be below"
  })
  void eachFaultOfAPanHasASentence(String inside, String taper, String ml, String sentence) {
    PanDraft half = PanDraft.of(Stock.NONE.pan(PanKind.HALF_ID).orElseThrow());
    PanDraft typed =
        new PanDraft(
            half.name(),
            half.outer(),
            java.util.List.of(inside, half.inner().get(1), half.inner().get(2)),
            taper,
            ml);
    assertThat(typed.problem().orElse("")).contains(sentence);
    assertThat(typed.problem().isEmpty()).isEqualTo(sentence.isEmpty());
  }

  @Test
  void aPanComesOutAsItWentIn() {
    for (PanKind pan : PanKind.USUAL) {
      assertThat(PanDraft.of(pan).toPan(pan.id())).isEqualTo(pan);
    }
  }

  private static TubeDraft draft(String size, String left, String price, String opened) {
    return new TubeDraft("blue", size, false, left, "", "", "1.3", price, opened, "");
  }
}
