package org.panwright.app.swatches;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.words.SwatchesWords;

/**
 * What is under way and what share of it is done, with a button to leave it off; once left off,
 * what that means, with a button to take it up again.
 */
public final class WorkBar extends VBox {
  private final Label words = Sentence.of("", "soft", "small");
  private final ProgressBar bar = new ProgressBar();
  private final Button cancel = new Button(SwatchesWords.CANCEL);
  private final Button again = new Button();

  /**
   * @param share of the work under way that is done, 0..1; below 0 where nobody can say
   * @param leaveOff leaves it off
   * @param takeUp begins anew
   */
  public WorkBar(ObservableValue<Number> share, Runnable leaveOff, Runnable takeUp) {
    super(6);
    bar.setId("work-progress");
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.progressProperty().bind(share);
    HBox.setHgrow(bar, Priority.ALWAYS);
    cancel.setOnAction(
        event -> {
          boolean held = cancel.isFocused();
          leaveOff.run();
          if (held && again.isVisible()) {
            again.requestFocus();
          }
        });
    again.setOnAction(event -> takeUp.run());
    HBox line = new HBox(8, bar, cancel, again);
    line.setAlignment(Pos.CENTER_LEFT);
    for (Node part : List.of(this, bar, cancel, again)) {
      part.managedProperty().bind(part.visibleProperty());
    }
    getChildren().setAll(words, line);
    hide();
  }

  /** Shows work under way. */
  public void run(String what) {
    show(what, true, false);
  }

  /**
   * Shows work that was left off.
   *
   * @param takeUp what the button to take it up again says
   */
  public void leftOff(String what, String takeUp) {
    again.setText(takeUp);
    show(what, false, true);
  }

  /** Shows nothing. */
  public void hide() {
    show("", false, false);
    setVisible(false);
  }

  private void show(String what, boolean running, boolean left) {
    words.setText(what);
    bar.setVisible(running);
    cancel.setVisible(running);
    again.setVisible(left);
    setVisible(true);
  }
}
