package org.panwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Undo and redo over anything a painter may do; the sequences are random, their seeds are not. */
class HistoryTest {
  private static final Kit START = Kit.empty("start");
  private static final int LENGTH = 150;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
  void undoingAllLeadsToTheStartAndRedoingAllToTheEnd(long seed) {
    History end = performed(seed);
    History undone = end;
    while (undone.undoable().isPresent()) {
      undone = undone.undo();
    }
    assertThat(undone.kit()).isEqualTo(START);
    History redone = undone;
    while (redone.redoable().isPresent()) {
      redone = redone.redo();
    }
    assertThat(redone).isEqualTo(end);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 5})
  void everyStepBackIsTheKitThatWasThere(long seed) {
    List<Kit> kits = new ArrayList<>();
    History history = History.startingWith(START);
    for (Edit edit : new RandomEdits(seed).sequence(START, LENGTH)) {
      History after = history.perform(edit);
      if (!after.equals(history)) {
        kits.add(history.kit());
      }
      history = after;
    }
    assertThat(kits).hasSizeGreaterThan(LENGTH / 2);
    for (int i = kits.size() - 1; i >= 0; i--) {
      history = history.undo();
      assertThat(history.kit()).isEqualTo(kits.get(i));
    }
  }

  @Test
  void aNewStepForgetsWhatWasUndone() {
    History history =
        History.startingWith(START)
            .perform(new Edit.RenameKit("a"))
            .undo()
            .perform(new Edit.RenameKit("b"));
    assertThat(history.redoable()).isEmpty();
    assertThat(history.undo().kit()).isEqualTo(START);
  }

  @Test
  void anEditThatChangesNothingIsNoStep() {
    History history = History.startingWith(START);
    assertThat(history.perform(new Edit.RenameKit("start"))).isSameAs(history);
  }

  @Test
  void withNothingToUndoOrRedoItStaysAsItIs() {
    History history = History.startingWith(START);
    assertThat(history.undo()).isSameAs(history);
    assertThat(history.redo()).isSameAs(history);
  }

  @Test
  void theOldestStepsAreForgottenFirst() {
    History history = History.startingWith(START);
    for (int i = 0; i < History.LONGEST + 10; i++) {
      history = history.perform(new Edit.RenameKit("name " + i));
    }
    assertThat(history.past()).hasSize(History.LONGEST);
    while (history.undoable().isPresent()) {
      history = history.undo();
    }
    assertThat(history.kit().name()).isEqualTo("name 9");
  }

  private static History performed(long seed) {
    History history = History.startingWith(START);
    for (Edit edit : new RandomEdits(seed).sequence(START, LENGTH)) {
      history = history.perform(edit);
    }
    return history;
  }
}
