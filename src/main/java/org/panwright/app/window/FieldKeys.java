package org.panwright.app.window;

import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import org.panwright.app.fx.Action;

/**
 * Lets undo and redo reach the kit while the keyboard is in a text field: the field takes these
 * keys for its own typing, also when there is none to take back.
 */
final class FieldKeys {
  private FieldKeys() {}

  static void passOn(Scene scene, Action undo, Action redo) {
    scene.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (scene.getFocusOwner() instanceof TextInputControl field) {
            boolean toUndo = isFor(undo, event) && !field.isUndoable();
            boolean toRedo = isFor(redo, event) && !field.isRedoable();
            if (toUndo || toRedo) {
              Action action = toUndo ? undo : redo;
              event.consume();
              if (action.possible().getValue()) {
                action.work().run();
              }
            }
          }
        });
  }

  private static boolean isFor(Action action, KeyEvent event) {
    return action.keys().filter(keys -> keys.match(event)).isPresent();
  }
}
