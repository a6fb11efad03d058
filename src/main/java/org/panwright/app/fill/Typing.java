package org.panwright.app.fill;

import java.util.function.Consumer;
import javafx.scene.control.TextField;

/** Fields whose text counts when the painter presses Enter or goes on. */
final class Typing {
  private Typing() {}

  /**
   * A field.
   *
   * @param meaning for readers of the screen
   * @param columns about so many letters wide
   * @param done gets the text
   */
  static TextField field(String meaning, int columns, Consumer<String> done) {
    TextField field = new TextField();
    field.setAccessibleText(meaning);
    field.setPrefColumnCount(columns);
    field.setOnAction(event -> done.accept(field.getText()));
    field
        .focusedProperty()
        .addListener(
            (property, before, now) -> {
              if (!now) {
                done.accept(field.getText());
              }
            });
    return field;
  }
}
