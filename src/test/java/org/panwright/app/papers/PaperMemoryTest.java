package org.panwright.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.settings.Remembered;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.CardFormat;
import org.panwright.print.CardOptions;
import org.panwright.print.ChartOptions;
import org.panwright.print.ComparisonOptions;
import org.panwright.print.FillPlanOptions;
import org.panwright.print.LabelOptions;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperKind;
import org.panwright.print.PaperOrder;
import org.panwright.store.SettingsFile;

/** What is chosen about papers is there again at the next start. */
class PaperMemoryTest {
  private static final List<PaperOrder> CHOSEN =
      List.of(
          new CardOptions(
              CardFormat.A6, PaperFormat.A3, CardOptions.Fields.TO_PAINT, false, 7, true),
          new ChartOptions(
              ChartOptions.Shape.TRIANGLE, OptionalDouble.of(12.5), PaperFormat.A5, true),
          new LabelOptions(PaperFormat.LETTER, LabelOptions.Places.BASE),
          new FillPlanOptions(PaperFormat.A5, true));

  @TempDir Path folder;
  private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();

  @AfterEach
  void stop() {
    clock.shutdownNow();
  }

  @Test
  void everyChoiceIsThereAgain() {
    Remembered before = remembered();
    PapersModel model = model(before, PaperFormat.A4);
    CHOSEN.forEach(model::change);
    model.tick(PaperKind.COMPARISON, false);
    model.tick(PaperKind.SWATCH_SHEET, false);
    model.greyProperty().set(true);
    before.writeNow();

    PapersModel again = model(remembered(), PaperFormat.A4);
    assertThat(CHOSEN).allSatisfy(order -> assertThat(again.order(order.kind())).isEqualTo(order));
    for (PaperKind kind : PaperKind.values()) {
      assertThat(again.isTicked(kind))
          .as(kind.name())
          .isEqualTo(kind != PaperKind.COMPARISON && kind != PaperKind.SWATCH_SHEET);
    }
    assertThat(again.greyProperty().get()).isTrue();
  }

  @Test
  void whatWasNeverChosenFollowsTheCountrysPaper() {
    Remembered before = remembered();
    model(before, PaperFormat.A4).change(LabelOptions.USUAL.withPlaces(LabelOptions.Places.SIDE));
    before.writeNow();
    PapersModel elsewhere = model(remembered(), PaperFormat.LETTER);
    assertThat(elsewhere.order(PaperKind.PAN_LABELS))
        .isEqualTo(new LabelOptions(PaperFormat.LETTER, LabelOptions.Places.SIDE));
  }

  @Test
  void aLineupOfAKitIsNotRemembered() {
    Remembered before = remembered();
    model(before, PaperFormat.A4)
        .change(ComparisonOptions.USUAL.withOtherId(Optional.of("some lineup")));
    before.writeNow();
    assertThat(model(remembered(), PaperFormat.A4).order(PaperKind.COMPARISON))
        .isEqualTo(ComparisonOptions.USUAL);
  }

  @Test
  void choicesThatMakeNoSenseArePassedOver() throws Exception {
    Files.writeString(
        folder.resolve("settings.json"),
        """
        {"papers": {"key-card.copies": "999999", "key-card.paper": "papyrus", "key-card.turned": "true",
         "mixing-chart.cellMm": "wide", "mixing-chart.hints": 7, "leftOut": "a kite", "no-paper.at": "all"}}
        """);
    PapersModel model = model(remembered(), PaperFormat.A4);
    CardOptions usual = (CardOptions) PaperKind.KEY_CARD.usual();
    assertThat(model.order(PaperKind.KEY_CARD)).isEqualTo(usual.withTurned(true));
    assertThat(model.order(PaperKind.MIXING_CHART)).isEqualTo(ChartOptions.USUAL);
    assertThat(PaperKind.values()).allMatch(model::isTicked);
  }

  private Remembered remembered() {
    return new Remembered(new SettingsFile(folder.resolve("settings.json")), clock, words -> {});
  }

  private static PapersModel model(Remembered remembered, PaperFormat usual) {
    return new PapersModel(
        Sessions.on(ThreePaintKit.kit()),
        new PigmentLibrary(List.of()),
        PaperMemory.in(remembered, usual),
        () -> LocalDate.of(2026, 11, 25),
        Sessions.AT_ONCE,
        Sessions.AT_ONCE,
        Sessions::fail);
  }
}
