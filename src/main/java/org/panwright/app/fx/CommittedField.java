package org.panwright.app.fx;

import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;

/**
 * A field whose text counts when the painter leaves it or presses Enter; Escape takes the typing
 * back. What cannot be used stays in the field, with a sentence that says why.
 */
public final class CommittedField extends TextField {
  private static final PseudoClass PROBLEM = PseudoClass.getPseudoClass("problem");

  private final Function<String, String> commit;
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private String shown = "";

  /**
   * @param commit takes what was typed and answers what is wrong with it, empty if nothing is
   */
  public CommittedField(Function<String, String> commit) {
    this.commit = commit;
    problem.addListener((p, before, now) -> pseudoClassStateChanged(PROBLEM, !now.isEmpty()));
    setOnAction(event -> take());
    focusedProperty()
        .addListener(
            (property, before, now) -> {
              if (!now) {
                take();
              }
            });
    setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ESCAPE && !getText().equals(shown)) {
            setText(shown);
            problem.set("");
            event.consume();
          }
        });
  }

  /** What is wrong with what was typed; empty if nothing is. */
  public ReadOnlyStringProperty problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** Shows a value, unless it is the one shown already and the painter is typing over it. */
  public void show(String text) {
    if (!text.equals(shown)) {
      showAnew(text);
    }
  }

  /** Shows a value whatever the painter has typed: the field now belongs to another thing. */
  public void showAnew(String text) {
    shown = text;
    setText(text);
    problem.set("");
  }

  private void take() {
    if (getText().equals(shown)) {
      problem.set("");
      return;
    }
    String typed = getText();
    String said = commit.apply(typed);
    problem.set(said);
    if (said.isEmpty() && getText().equals(typed)) {
      // Taken, but written otherwise than typed, as 3,50 is 3.5: show what stands.
      setText(shown);
    }
  }
}
