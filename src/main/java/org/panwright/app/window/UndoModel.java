package org.panwright.app.window;

import javafx.beans.value.ObservableValue;
import org.panwright.app.Session;
import org.panwright.app.fx.Action;
import org.panwright.kit.History;
import org.panwright.words.EditWords;
import org.panwright.words.WindowWords;

/** Undo and redo with the words for what they would do. */
final class UndoModel {
  private UndoModel() {}

  static Action undo(Session session) {
    ObservableValue<History> history = session.historyProperty();
    return Action.of(WindowWords.UNDO, session::undo)
        .named(history.map(UndoModel::undoWords))
        .when(history.map(h -> h.undoable().isPresent()))
        .on("Shortcut+Z");
  }

  static Action redo(Session session) {
    ObservableValue<History> history = session.historyProperty();
    return Action.of(WindowWords.REDO, session::redo)
        .named(history.map(UndoModel::redoWords))
        .when(history.map(h -> h.redoable().isPresent()))
        .on("Shortcut+Shift+Z");
  }

  /** The step to undo knows the kit before its edit. */
  static String undoWords(History history) {
    return history
        .undoable()
        .map(
            edit ->
                WindowWords.undo(
                    EditWords.of(edit, history.past().get(history.past().size() - 1).kit())))
        .orElse(WindowWords.UNDO);
  }

  /** The edit to redo would start from the kit now. */
  static String redoWords(History history) {
    return history
        .redoable()
        .map(edit -> WindowWords.redo(EditWords.of(edit, history.kit())))
        .orElse(WindowWords.REDO);
  }
}
