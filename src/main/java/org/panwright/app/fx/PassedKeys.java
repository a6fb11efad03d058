package org.panwright.app.fx;

import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Lets the keys that lead out of a field lead out of one of several lines as well, which the
 * toolkit keeps for itself: Tab to the next field, Escape to the form.
 */
public final class PassedKeys {
  private PassedKeys() {}

  /** Lets them through; a tab character cannot be typed then. */
  public static void through(TextArea field) {
    field.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
            event.consume();
            // With Ctrl the toolkit goes to the next field itself.
            field.fireEvent(key(KeyCode.TAB, event.isShiftDown(), true));
          } else if (event.getCode() == KeyCode.ESCAPE) {
            event.consume();
            field.getParent().fireEvent(key(KeyCode.ESCAPE, false, false));
          }
        });
  }

  /** Hands Enter on to the form round a field that has nothing to do with it itself. */
  public static void enter(javafx.scene.Node field) {
    field.getParent().fireEvent(key(KeyCode.ENTER, false, false));
  }

  private static KeyEvent key(KeyCode code, boolean shift, boolean control) {
    return new KeyEvent(
        KeyEvent.KEY_PRESSED, KeyEvent.CHAR_UNDEFINED, "", code, shift, control, false, false);
  }
}
