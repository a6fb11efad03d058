package org.panwright.app.outing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.analysis.outing.OutingDay;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Edit;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.PackingWords;

class OutingModelTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 5, 1);

  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final OutingModel model =
      new OutingModel(
          session,
          new PigmentLibrary(List.of()),
          () -> TODAY,
          Sessions.AT_ONCE,
          Sessions.AT_ONCE,
          Sessions::fail);
  private final OutingEntries entries = new OutingEntries(model);
  private final CheckListModel checks = new CheckListModel(model);

  @Test
  void aKitWithoutOutingsShowsNone() {
    assertThat(model.chosenProperty().get()).isEmpty();
    assertThat(model.packedProperty().get()).isEmpty();
    assertThat(model.isSettled()).isTrue();
    assertThat(checks.items()).isEmpty();
  }

  @Test
  void aNewOutingTakesTheLineupLookedAtAndTheRatesOfTheLast() {
    model.add();
    entries.rate("0,05", Rate.PAINT);
    model.add();
    assertThat(session.kit().outings()).hasSize(2);
    assertThat(chosen().lineupId()).contains(ThreePaintKit.LINEUP);
    assertThat(chosen().rates().paintMlPerA5()).isEqualTo(0.05);
    assertThat(model.packedProperty().get().orElseThrow().needs().paints()).hasSize(2);
  }

  @Test
  void undoTakesEachChangeBackAndTheOutingStaysChosen() {
    model.add();
    entries.name("Sea");
    entries.hours("5,5");
    session.undo();
    assertThat(chosen().name()).isEqualTo("Sea");
    assertThat(chosen().hours()).isEqualTo(3);
    session.undo();
    session.undo();
    assertThat(model.chosenProperty().get()).isEmpty();
    session.redo();
    assertThat(model.chosenProperty().get()).isPresent();
  }

  @Test
  void aCopyHasNothingTickedAndNoDate() {
    model.add();
    entries.date("15.5.2027");
    checks.tick("water", true);
    model.copy();
    assertThat(session.kit().outings()).hasSize(2);
    assertThat(chosen().date()).isEmpty();
    assertThat(chosen().name()).endsWith("(copy)");
    assertThat(checks.items()).noneMatch(CheckItem::ticked);
  }

  @Test
  void aRemovedOutingGivesWayToAnother() {
    model.add();
    model.add();
    model.remove();
    assertThat(session.kit().outings()).hasSize(1);
    assertThat(chosen()).isEqualTo(session.kit().outings().get(0));
  }

  @Test
  void typingWhatStandsAlreadyIsNoEdit() {
    model.add();
    Object before = session.historyProperty().get();
    assertThat(entries.hours("3")).isEmpty();
    assertThat(entries.date("")).isEmpty();
    assertThat(session.historyProperty().get()).isSameAs(before);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "1.1.2020, PAST",
    "2027-05-01, TODAY",
    "2/5/2027, AHEAD",
    "9999-12-31, FAR_AHEAD",
    "'', OPEN"
  })
  void everyDateIsTakenAndRemarkedOn(String typed, OutingDay day) {
    model.add();
    assertThat(entries.date(typed)).isEmpty();
    assertThat(model.day()).isEqualTo(day);
  }

  @Test
  void whatCannotBeUsedIsAnsweredAndChangesNothing() {
    model.add();
    Outing before = chosen();
    assertThat(entries.name("  ")).isNotEmpty();
    assertThat(entries.date("next week")).contains("next week");
    assertThat(entries.hours("25")).contains("25").contains("24");
    assertThat(entries.sheets("2.5")).contains("whole");
    assertThat(entries.sheets("-1")).isNotEmpty();
    assertThat(entries.widthMm("0")).contains("20");
    assertThat(entries.heightMm("x")).contains("x");
    assertThat(entries.rate("11", Rate.PAINT)).isNotEmpty();
    assertThat(entries.rate("1,5", Rate.CUPS)).contains("whole");
    assertThat(chosen()).isEqualTo(before);
  }

  @Test
  void everyRateIsReadAndWrittenInItsOwnPlace() {
    model.add();
    double value = 10;
    for (Rate rate : Rate.values()) {
      assertThat(entries.rate(Double.toString(value), rate)).as(rate.name()).isEmpty();
      assertThat(rate.get(chosen().rates())).isEqualTo(value);
    }
    assertThat(chosen().rates()).isEqualTo(new PackingRates(10, 10, 10, 10, 10, 10, 10));
  }

  @Test
  void theFirstTickMakesTheUsualListThePainters() {
    model.add();
    assertThat(checks.isUsual()).isTrue();
    checks.tick("water", true);
    assertThat(checks.isUsual()).isFalse();
    assertThat(checks.items()).hasSameSizeAs(PackingWords.usual());
    assertThat(checks.items().stream().filter(CheckItem::ticked))
        .extracting(CheckItem::id)
        .containsExactly("water");
    checks.usual();
    assertThat(chosen().checklist()).isEmpty();
  }

  @Test
  void entriesAreAddedRenamedNotedMovedAndTakenOff() {
    model.add();
    checks.add(" Kite ");
    checks.add("   ");
    CheckItem kite = last();
    assertThat(kite.text()).isEqualTo("Kite");
    checks.rename(kite.id(), "Red kite");
    checks.rename(kite.id(), " ");
    checks.note(kite.id(), "for the wind");
    assertThat(last().text()).isEqualTo("Red kite");
    assertThat(last().note()).isEqualTo("for the wind");
    int size = checks.items().size();
    checks.move(kite.id(), 1);
    assertThat(last().id()).isEqualTo(kite.id());
    checks.move(kite.id(), -1);
    assertThat(checks.items().get(size - 2).id()).isEqualTo(kite.id());
    checks.remove(kite.id());
    assertThat(checks.items()).hasSize(size - 1);
    session.undo();
    assertThat(checks.items().get(size - 2).text()).isEqualTo("Red kite");
  }

  @Test
  void anOutingWhoseLineupGoesNeedsNoPaint() {
    model.add();
    session.perform(new Edit.RemoveLineup(ThreePaintKit.LINEUP));
    assertThat(chosen().lineupId()).isEqualTo(Optional.empty());
    assertThat(model.packedProperty().get().orElseThrow().needs().paints()).isEmpty();
  }

  private CheckItem last() {
    return checks.items().get(checks.items().size() - 1);
  }

  private Outing chosen() {
    return model.chosenProperty().get().orElseThrow();
  }
}
