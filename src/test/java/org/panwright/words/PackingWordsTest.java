package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.analysis.outing.PaintUse;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.SheetSize;
import org.panwright.kit.Supply;

class PackingWordsTest {
  private static final Kit KIT = Lineups.kit(Lineups.paints("PY35", "PB29"), 2, "PY35", "PB29");
  private static final Outing OUTING =
      new Outing("o", "day", Optional.empty(), "", Optional.of(Lineups.ID), 3, 4, List.of());
  private static final PackingNeeds NEEDS =
      PackingNeeds.of(KIT, OUTING, Lineups.LIBRARY, () -> false);

  @ParameterizedTest
  @CsvSource({
    "0, 0 ml",
    "0.004, 0.004 ml",
    "0.0004, under 0.001 ml",
    "0.14, 0.14 ml",
    "2, 2 ml",
    "250, 250 ml",
    "1250, 1.25 l"
  })
  void amountsOfLiquidReadEasily(double ml, String words) {
    assertThat(PackingWords.volume(ml)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "0.8, 0.2, '0.8 ml of 0.2 ml: runs out on the way'",
    "0.8, 1.2, '0.8 ml of 1.2 ml: enough for this outing'",
    "0.04, 2, '0.04 ml of 2 ml: 50 or more such outings'",
    "0.2, 2.5, '0.2 ml of 2.5 ml: about 12 such outings'",
    "0.1, 2.4, '0.1 ml of 2.4 ml: 20 or more such outings'",
    "0.01, 2.345, '0.01 ml of 2.35 ml: 100 or more such outings'",
    "0, 2, 2 ml aboard"
  })
  void saysHowLongAPaintLasts(double use, double aboard, String words) {
    assertThat(PackingWords.lasting(new PaintUse("p", use, aboard))).isEqualTo(words);
  }

  @Test
  void everySupplyHasAnAmount() {
    for (Supply supply : Supply.values()) {
      assertThat(PackingWords.amount(supply, NEEDS, KIT)).as(supply.name()).isNotBlank();
    }
  }

  @Test
  void theUsualListStandsAsLongAsThePainterHasNone() {
    assertThat(PackingWords.checklist(OUTING)).isEqualTo(PackingWords.usual());
    assertThat(PackingWords.checklist(OUTING.withChecklist(Optional.of(List.of())))).isEmpty();
    assertThat(PackingWords.usual()).extracting(CheckItem::id).doesNotHaveDuplicates();
    assertThat(PackingWords.usual())
        .flatExtracting(item -> item.supply().stream().toList())
        .containsExactlyInAnyOrder(Supply.values());
  }

  @Test
  void cautionsNameTheMetalTheSafetySheetAndTheRinseWater() {
    List<String> cautions = PackingWords.cautions(NEEDS, KIT);
    assertThat(cautions)
        .anySatisfy(c -> assertThat(c).contains("admium in PY35").contains("safety sheet"));
    assertThat(cautions).contains(PackingWords.RINSE_WATER, PackingWords.HANDS);
  }

  @ParameterizedTest
  @CsvSource({
    "148, 210, A5 (148 × 210 mm)",
    "210, 148, A5 across (210 × 148 mm)",
    "380, 560, half sheet (380 × 560 mm)",
    "123, 45.5, 123 × 45.5 mm"
  })
  void sheetsGoByTheNamesTheyAreSoldUnder(double width, double height, String words) {
    assertThat(SheetWords.size(new SheetSize(width, height))).isEqualTo(words);
  }
}
