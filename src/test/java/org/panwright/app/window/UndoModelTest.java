package org.panwright.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.fx.Action;
import org.panwright.kit.Edit;

class UndoModelTest {
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final Action undo = UndoModel.undo(session);
  private final Action redo = UndoModel.redo(session);

  @Test
  void nothingCanBeUndoneAtFirst() {
    assertThat(undo.possible().getValue()).isFalse();
    assertThat(redo.possible().getValue()).isFalse();
    assertThat(undo.label().getValue()).isEqualTo("Undo");
  }

  @Test
  void theLabelNamesWhatIsUndoneByItsNameBefore() {
    session.perform(new Edit.RemovePaint("red"));
    assertThat(undo.label().getValue()).isEqualTo("Undo: remove red");
    assertThat(undo.possible().getValue()).isTrue();
  }

  @Test
  void undoMovesTheLabelToRedo() {
    session.perform(new Edit.RemovePaint("red"));
    undo.work().run();
    assertThat(redo.label().getValue()).isEqualTo("Redo: remove red");
    assertThat(undo.possible().getValue()).isFalse();
    redo.work().run();
    assertThat(session.kit().shelf().find("red")).isEmpty();
  }
}
