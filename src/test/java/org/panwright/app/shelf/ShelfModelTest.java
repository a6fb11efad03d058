package org.panwright.app.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.BenchKit;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Well;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Transparency;

class ShelfModelTest {
  private final Session session = BenchKit.session(BenchKit.kit());
  private final Hand hand = new Hand(session);
  private final ShelfModel model = model(session, hand);

  private static ShelfModel model(Session session, Hand hand) {
    return new ShelfModel(
        session, new ToneBook(BenchKit.LIBRARY), hand, Runnable::run, Runnable::run);
  }

  private List<String> shown() {
    return model.rowsProperty().get().stream().map(row -> row.paint().id()).toList();
  }

  private ShelfRow row(String id) {
    return model.rowsProperty().get().stream()
        .filter(row -> row.paint().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private void query(ShelfQuery query) {
    model.queryProperty().set(query);
  }

  private Optional<Filling> in(String wellId) {
    return session.lineup().flatMap(l -> l.in(wellId));
  }

  @ParameterizedTest(name = "\"{0}\" finds {1}")
  @CsvSource(
      textBlock =
          """
          ultra,        ultra
          PB15,         phthalo sap
          pb29,         ultra
          'lem yell',   lemon
          QUINÄCRIDONE, rose
          green sap,    sap
          """)
  void searchFindsNameCodeAndHueWhateverCaseAndAccents(String text, String ids) {
    query(ShelfQuery.ALL.withText(text));
    assertThat(shown()).containsExactlyInAnyOrder(ids.split(" ", -1));
  }

  @Test
  void searchFindsByFamily() {
    query(ShelfQuery.ALL.withText("blue"));
    assertThat(shown()).contains("ultra", "phthalo").doesNotContain("lemon", "sienna");
  }

  /** Common practice: a yellow and a phthalo blue in one tube are sold and filed as a green. */
  @Test
  void mixedTubeIsFiledByItsColour() {
    assertThat(row("sap").family().name()).contains("GREEN");
  }

  /** Common practice: from yellow over red, violet, the warm blues and the cool ones to green. */
  @Test
  void ordersByHueRoundTheBox() {
    List<String> shown = shown();
    assertThat(shown.indexOf("lemon")).isLessThan(shown.indexOf("rose"));
    assertThat(shown.indexOf("rose")).isLessThan(shown.indexOf("ultra"));
    assertThat(shown.indexOf("ultra")).isLessThan(shown.indexOf("phthalo"));
    assertThat(shown.indexOf("phthalo")).isLessThan(shown.indexOf("viridian"));
    assertThat(shown.indexOf("viridian")).isLessThan(shown.indexOf("sienna"));
  }

  @Test
  void ordersByName() {
    query(ShelfQuery.ALL.withOrder(ShelfOrder.NAME));
    assertThat(shown())
        .containsExactly("sienna", "lemon", "phthalo", "rose", "sap", "ultra", "viridian");
  }

  /** Common practice: phthalo blue is among the strongest tinters, viridian among the weakest. */
  @Test
  void ordersByStrength() {
    query(ShelfQuery.ALL.withOrder(ShelfOrder.STRENGTH));
    List<String> shown = shown();
    assertThat(shown.indexOf("phthalo")).isLessThan(shown.indexOf("ultra"));
    assertThat(shown.indexOf("phthalo")).isLessThan(shown.indexOf("viridian"));
  }

  @Test
  void ordersByLightness() {
    query(ShelfQuery.ALL.withOrder(ShelfOrder.LIGHTNESS));
    assertThat(shown().get(0)).isEqualTo("lemon");
  }

  @Test
  void narrowsWithinOneKindByEitherAndBetweenKindsByBoth() {
    query(ShelfQuery.ALL.wanting(Ownership.TRIED, true).wanting(Ownership.WISHED, true));
    assertThat(shown()).containsExactlyInAnyOrder("phthalo", "viridian");
    query(ShelfQuery.ALL.wanting(Presence.IN_LINEUP, true).wanting(Ownership.OWNED, true));
    assertThat(shown()).containsExactlyInAnyOrder("lemon", "ultra", "rose");
    query(ShelfQuery.ALL.wanting(Transparency.OPAQUE, true).wanting(Ownership.TRIED, true));
    assertThat(shown()).doesNotContain("phthalo");
  }

  @Test
  void marksWhereAPaintSits() {
    assertThat(row("ultra").place()).isEqualTo("2");
    assertThat(row("sienna").place()).isEmpty();
    model.place("sienna", "w4");
    assertThat(row("sienna").place()).isEqualTo("4");
    assertThat(row("sienna").spoken()).contains("Burnt Sienna", "PBr7", "well 4", "estimate");
  }

  @Test
  void unchangedRowsStayTheSameObjects() {
    ShelfRow before = row("lemon");
    model.place("sienna", "w4");
    assertThat(row("lemon")).isSameAs(before);
  }

  @Test
  void nextEmptyWellIsFilledUntilNoneIsLeft() {
    for (int i = 0; i < 4; i++) {
      model.placeInNextEmpty("sienna");
    }
    assertThat(row("sienna").wells().stream().map(Well::label))
        .containsExactly("4", "5", "6", "dab 1");
    int steps = session.historyProperty().get().past().size();
    model.placeInNextEmpty("sienna");
    assertThat(session.historyProperty().get().past()).hasSize(steps);
    assertThat(hand.statusProperty().get()).contains("full");
  }

  @Test
  void takingOutOfSeveralWellsIsOneStep() {
    model.place("ultra", "w5");
    model.takeOut("ultra");
    assertThat(in("w2")).isEmpty();
    assertThat(in("w5")).isEmpty();
    session.undo();
    assertThat(in("w2")).isPresent();
    assertThat(in("w5")).isPresent();
  }

  @Test
  void wellPickedInTheBoxPicksItsPaintHere() {
    session.selectionProperty().set(new Selection.OfWell("w2"));
    assertThat(model.pickedProperty().get()).contains("ultra");
    session.perform(new Edit.MovePaint("line", "w1", "w2"));
    assertThat(model.pickedProperty().get()).contains("lemon");
  }

  @Test
  void removedPaintLeavesTheShelf() {
    session.perform(new Edit.RemovePaint("ultra"));
    assertThat(shown()).doesNotContain("ultra");
    assertThat(model.shelfSize()).isEqualTo(6);
  }

  @Test
  void manyNewPaintsAreWorkedOutAwayAndTheOldRowsStay() {
    Queue<Runnable> away = new ArrayDeque<>();
    ShelfModel slow =
        new ShelfModel(session, new ToneBook(BenchKit.LIBRARY), hand, away::add, Runnable::run);
    assertThat(slow.rowsProperty().get()).hasSize(7);
    List<Paint> many = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      String code = BenchKit.LIBRARY.pigments().get(i % 90).name().toString();
      String other = BenchKit.LIBRARY.pigments().get((i + 7) % 90).name().toString();
      many.add(BenchKit.paint("many" + i, "Paint " + i, Ownership.OWNED, code, other));
    }
    session.open(BenchKit.kit(many, BenchKit.box(), Map.of()));
    assertThat(slow.rowsProperty().get()).hasSize(7);
    while (!away.isEmpty()) {
      away.poll().run();
    }
    assertThat(slow.rowsProperty().get()).hasSize(100);
  }

  @Test
  void emptyKitHasAnEmptyShelfAndNothingToDo() {
    Session bare = BenchKit.session(Kit.empty("Bare"));
    ShelfModel none = model(bare, new Hand(bare));
    assertThat(none.rowsProperty().get()).isEmpty();
    assertThat(none.wells()).isEmpty();
    assertThat(none.nextEmpty()).isEmpty();
  }
}
