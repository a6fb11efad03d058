package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.store.DemoKit;

/** All papers of all lineups the program comes with. */
class DemoPapersTest {
  private static final Kit DEMO = DemoKit.read(CardKits.LIBRARY);

  static Stream<String> lineups() {
    return DEMO.lineups().stream().map(Lineup::id);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lineups")
  void cardsOfEveryFormatAreLegible(String lineup) {
    for (CardFormat format : CardFormat.values()) {
      for (CardOptions.Fields fields : CardOptions.Fields.values()) {
        CardOptions options = CardOptions.USUAL.withFormat(format).withFields(fields);
        KeyCard card = KeyCard.of(DEMO, lineup, CardKits.LIBRARY, options, CardKits.DATE);

        SheetChecks.check(card.papers());
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lineups")
  void theUsualCardTakesOneSheet(String lineup) {
    KeyCard card = KeyCard.of(DEMO, lineup, CardKits.LIBRARY, CardOptions.USUAL, CardKits.DATE);

    assertThat(card.papers().sheets()).hasSize(1);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lineups")
  void handPaintedPapersAreLegible(String lineup) {
    for (ChartOptions.Shape shape : ChartOptions.Shape.values()) {
      ChartOptions options = new ChartOptions(shape, OptionalDouble.empty(), PaperFormat.A4, true);
      SheetChecks.check(MixingChart.of(DEMO, lineup, CardKits.LIBRARY, options));
    }
    SheetChecks.check(SwatchLadder.of(DEMO, lineup, PaperFormat.A4));
    SheetChecks.check(PanLabels.of(DEMO, lineup, LabelOptions.USUAL).papers().orElseThrow());
  }
}
